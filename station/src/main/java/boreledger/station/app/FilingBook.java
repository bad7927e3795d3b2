package boreledger.station.app;

import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Filed;
import boreledger.station.ledger.EntryBody.Withdrawn;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobSessions;
import boreledger.station.session.FiledPass;
import boreledger.station.session.PassCheck;
import boreledger.station.session.StoredSession;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Notes passes with the file in a ledger that is there, and withdraws them. Nothing is erased: a
 * withdrawal is an entry that names the pass. Every call may take its time.
 *
 * @param writer writes the entries
 */
public record FilingBook(Path ledger, EntryWriter writer, Clock clock) {
  /**
   * What was done.
   *
   * @param done {@code filed} or {@code withdrawn}
   * @param entry the entry that says so
   * @param pass the pass's entry; the same when it was noted now
   */
  public record Kept(
      String done,
      long entry,
      long pass,
      int cylinder,
      String ring,
      int turns,
      double beforeMm,
      double afterMm) {
    static Kept of(String done, long entry, long pass, Filed filed) {
      return new Kept(
          done,
          entry,
          pass,
          filed.cylinder(),
          filed.ring(),
          filed.turns(),
          Double.parseDouble(filed.beforeMm()),
          Double.parseDouble(filed.afterMm()));
    }

    /** The same in words. */
    public String words() {
      return String.format(
          Locale.ROOT,
          "%s, as entry %d: %s ring in cylinder %d, %d turns, %.4f to %.4f mm.",
          done.equals("filed") ? "Noted" : "Withdrawn",
          entry,
          ring,
          cylinder,
          turns,
          beforeMm,
          afterMm);
    }
  }

  /**
   * Notes a pass.
   *
   * @throws UsageProblem if there is no such job, cylinder or ring, or the pass cannot have been
   */
  public Kept note(PassNote note) throws LedgerFault, UsageProblem {
    Filed filed;
    try (LedgerView view = LedgerView.open(ledger)) {
      filed = filed(new StoredJobs(view).sessions(note.jobName()), note);
    }
    long entry = writer.write(ledger, List.of(filed));
    return Kept.of("filed", entry, entry, filed);
  }

  /**
   * Withdraws a pass.
   *
   * @param entry the pass's entry
   * @param why in one plain clause
   * @param who the person
   * @throws UsageProblem if there is no such pass that counts
   */
  public Kept withdraw(long entry, String why, String who) throws LedgerFault, UsageProblem {
    if (why.isBlank() || who.isBlank()) {
      throw new UsageProblem("withdrawing a pass needs a reason and a name");
    }
    Filed filed = counting(entry);
    Withdrawn body =
        new Withdrawn(filed.session(), entry, clock.instant(), why.strip(), who.strip());
    return Kept.of("withdrawn", writer.write(ledger, List.of(body)), entry, filed);
  }

  private Filed filed(JobSessions sessions, PassNote note) throws UsageProblem {
    StoredSession session = session(sessions.sessions(), note.ring());
    Filed filed =
        new Filed(
            session.id(),
            note.cylinder(),
            note.ring(),
            note.turns(),
            note.beforeMm().toPlainString(),
            note.afterMm().toPlainString(),
            clock.instant(),
            note.by().strip());
    Optional<String> fault = PassCheck.fault(filed, sessions.jobs().get(session.id()));
    if (fault.isPresent()) {
      throw new UsageProblem(fault.get());
    }
    return filed;
  }

  /** The latest session of the ring's gaps, from which it is filed; else the job's latest. */
  private static StoredSession session(List<StoredSession> sessions, String ring) {
    return sessions.stream()
        .filter(each -> each.opened().measure() == Measure.GAP)
        .filter(each -> ring.equals(each.opened().ring()))
        .reduce((earlier, later) -> later)
        .orElse(sessions.get(sessions.size() - 1));
  }

  private Filed counting(long entry) throws LedgerFault, UsageProblem {
    try (LedgerView view = LedgerView.open(ledger)) {
      EntryBody body = view.entry(entry).map(Entry::body).orElse(null);
      if (!(body instanceof Filed filed)) {
        throw new UsageProblem("entry " + entry + " is no pass with the file noted in this ledger");
      }
      boolean counts =
          FiledPass.counting(view.filings()).stream().anyMatch(pass -> pass.seq() == entry);
      if (!counts) {
        throw new UsageProblem("entry " + entry + " was withdrawn already");
      }
      return filed;
    }
  }
}
