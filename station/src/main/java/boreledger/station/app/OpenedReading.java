package boreledger.station.app;

import boreledger.calc.input.ImpossibleInput;
import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
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
    String noDiameter) {
  /** The reading itself. */
  public ReadingTaken reading() {
    return (ReadingTaken) line.entry().body();
  }

  static OpenedReading of(LedgerView view, long seq) throws LedgerFault, UsageProblem {
    Entry entry = view.entry(seq).orElseThrow(() -> noReading(seq));
    if (!(entry.body() instanceof ReadingTaken reading)) {
      throw noReading(seq);
    }
    StoredSession session =
        StoredSession.some(view, id -> id == reading.session()).stream()
            .findFirst()
            .orElseThrow(() -> noReading(seq));
    EntryLine line =
        SessionStory.of(view.ofSession(session.id())).stream()
            .filter(each -> each.entry().seq() == seq)
            .findFirst()
            .orElseThrow(() -> noReading(seq));
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
        reading.setting() == null ? null : view.entry(reading.setting()).orElse(null),
        session.stintAt(reading.tS()),
        diameter,
        noDiameter);
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
