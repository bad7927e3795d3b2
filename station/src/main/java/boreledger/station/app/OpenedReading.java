package boreledger.station.app;

import boreledger.calc.input.ImpossibleInput;
import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.Stint;
import java.util.List;

/**
 * A reading down to its bytes, and what it was taken with.
 *
 * @param line the reading and how it stands
 * @param gauge what a person calls the gauge
 * @param gaugeFile its profile's file
 * @param setting the reading on the setting ring in force; null where there is none
 * @param temperatures in force at that moment
 * @param diameter what the reading means as a diameter, computed from its session alone; null
 *     unless it is a bore's reading in force
 * @param free the places of its session's plan without a reading that stands, in order: there it
 *     can be moved to; empty for a reading that was taken back or is of a setting ring
 * @param noDiameter why there is no diameter although it is one, in words; else null
 */
public record OpenedReading(
    EntryLine line,
    SessionOpened opened,
    String gauge,
    String gaugeFile,
    Entry setting,
    Stint temperatures,
    PositionResult diameter,
    List<Position> free,
    String noDiameter) {
  /** Takes a copy of the list. */
  public OpenedReading {
    free = List.copyOf(free);
  }

  /** The reading itself. */
  public ReadingTaken reading() {
    return (ReadingTaken) line.entry().body();
  }

  static OpenedReading of(LedgerView view, long seq) throws LedgerFault, UsageProblem {
    long id = session(view, seq);
    StoredSession session =
        StoredSession.some(view, each -> each == id).stream()
            .findFirst()
            .orElseThrow(() -> noReading(seq));
    List<Entry> said = view.ofSession(id);
    EntryLine line =
        SessionStory.of(said).stream()
            .filter(each -> each.entry().seq() == seq)
            .findFirst()
            .orElseThrow(() -> noReading(seq));
    if (!(line.entry().body() instanceof ReadingTaken reading)) {
      throw noReading(seq);
    }
    String sha256 = session.opened().gauge();
    PositionResult diameter = null;
    String noDiameter = null;
    try {
      diameter = diameter(view, session, line);
    } catch (LedgerFault | ImpossibleInput e) {
      noDiameter = e.getMessage();
    }
    return new OpenedReading(
        line,
        session.opened(),
        LedgerBook.gaugeName(view, sha256),
        view.document(sha256).map(Document::name).orElse(""),
        setting(said, reading),
        session.stintAt(reading.tS()),
        diameter,
        free(view, session, line),
        noDiameter);
  }

  private static List<Position> free(LedgerView view, StoredSession session, EntryLine line) {
    if (line.standing() == Standing.TAKEN_BACK || line.position() instanceof SettingCheck) {
      return List.of();
    }
    try {
      return SessionPlan.of(view, session).stream()
          .filter(place -> !(place instanceof SettingCheck) && session.at(place).isEmpty())
          .toList();
    } catch (LedgerFault damaged) {
      // What can still be read is shown; the audit says what is damaged.
      return List.of();
    }
  }

  private static long session(LedgerView view, long seq) throws LedgerFault, UsageProblem {
    EntryBody body = view.entry(seq).map(Entry::body).orElseThrow(() -> noReading(seq));
    if (body instanceof ReadingTaken reading) {
      return reading.session();
    } else if (body instanceof ImportedEntry imported && imported.session() != null) {
      return imported.session();
    }
    throw noReading(seq);
  }

  private static Entry setting(List<Entry> said, ReadingTaken reading) {
    return said.stream()
        .filter(entry -> reading.setting() != null && entry.seq() == reading.setting())
        .findFirst()
        .orElse(null);
  }

  private static PositionResult diameter(LedgerView view, StoredSession session, EntryLine line)
      throws LedgerFault {
    if (session.opened().measure() != Measure.BORE
        || line.standing() != Standing.IN_FORCE
        || !(line.position() instanceof Position.Bore bore)) {
      return null;
    }
    return new StoredJobs(view)
        .results(List.of(session.id())).cylinders().stream()
            .filter(cylinder -> cylinder.cylinder() == bore.cylinder())
            .flatMap(cylinder -> cylinder.bore().positions().stream())
            .filter(each -> each.depthMm() == bore.depthMm() && each.axis().equals(bore.axis()))
            .filter(each -> each.diameterMm() != null)
            .findFirst()
            .orElse(null);
  }

  private static UsageProblem noReading(long seq) {
    return new UsageProblem("entry " + seq + " is no reading of a session");
  }
}
