package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.Reads;
import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.session.Correction;
import boreledger.station.session.Correction.Done;
import boreledger.station.session.Correction.NotPossible;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.Amendment;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A ledger to leaf through. Every call opens the file anew and closes it, reads no more than it
 * gives back, and is made off the screen's thread.
 *
 * @param ledger the file; it need not exist yet
 * @param writer writes corrections
 */
public record LedgerBook(Path ledger, EntryWriter writer) {
  /** More than any entry's number. */
  public static final long END = Long.MAX_VALUE;

  private static final int AT_ONCE = 200;

  /** A ledger that is corrected by itself. */
  public LedgerBook(Path ledger) {
    this(ledger, EntryWriter.BY_ITSELF);
  }

  /**
   * How a session's values are to be shown.
   *
   * @param unit the unit that its job wants
   * @param reads whether the gauge gave deviations or sizes
   */
  public record Manner(DisplayUnit unit, Reads reads) {}

  /**
   * Sessions, newest first.
   *
   * @param wanted which of them
   * @param before only those opened before this entry
   * @param most how many at most
   */
  public LedgerPage<SessionLine> sessions(Predicate<SessionLine> wanted, long before, int most)
      throws LedgerFault {
    Optional<LedgerView> view = LedgerView.openIfAny(ledger);
    if (view.isEmpty()) {
      return new LedgerPage<>(List.of(), false);
    }
    try (LedgerView open = view.get()) {
      List<SessionLine> found = found(open, wanted, before, most);
      boolean more = found.size() > most;
      return new LedgerPage<>(more ? found.subList(0, most) : found, more);
    }
  }

  /**
   * Makes sure that there is such a ledger.
   *
   * @throws LedgerFault if there is none, or it cannot be read
   */
  public void require() throws LedgerFault {
    LedgerView.open(ledger).close();
  }

  /**
   * What was said in a session, oldest first.
   *
   * @param before only entries before this one
   * @param most how many at most, the last ones
   */
  public LedgerPage<Entry> entries(long session, long before, int most) throws LedgerFault {
    try (LedgerView view = LedgerView.open(ledger)) {
      List<Entry> entries = view.ofSessionBefore(session, before, most + 1);
      boolean more = entries.size() > most;
      return new LedgerPage<>(more ? entries.subList(1, entries.size()) : entries, more);
    }
  }

  /** How a session's values are to be shown; in millimetres as read when its files are damaged. */
  public Manner manner(SessionOpened opened) throws LedgerFault {
    try (LedgerView view = LedgerView.open(ledger)) {
      StoredJobs jobs = new StoredJobs(view);
      return new Manner(unit(jobs, opened), reads(jobs, opened));
    }
  }

  /** Everything that is known of a reading. */
  public OpenedReading reading(long entry) throws LedgerFault, UsageProblem {
    try (LedgerView view = LedgerView.open(ledger)) {
      return OpenedReading.of(view, entry);
    }
  }

  /**
   * Takes a reading back.
   *
   * @param why in one plain clause
   * @param who the person
   */
  public Done takeBack(long entry, String why, String who, Clock clock)
      throws LedgerFault, NotPossible {
    return correction(why, who, clock).takeBack(entry);
  }

  /**
   * Lets a reading that was taken back count again.
   *
   * @param why in one plain clause
   * @param who the person
   */
  public Done restore(long entry, String why, String who, Clock clock)
      throws LedgerFault, NotPossible {
    return correction(why, who, clock).restore(entry);
  }

  /**
   * Says that a reading was taken at another place of its session's plan.
   *
   * @param to the place in words, such as {@code cylinder 2, 60 mm, pin}
   * @param why in one plain clause
   * @param who the person
   * @throws UsageProblem if the plan has no such place
   */
  public Done move(long entry, String to, String why, String who, Clock clock)
      throws LedgerFault, NotPossible, UsageProblem {
    Correction correction = correction(why, who, clock);
    try (LedgerView view = LedgerView.open(ledger)) {
      List<Position> plan = SessionPlan.of(view, correction.session(entry));
      return correction.move(entry, PlaceWords.find(to, plan), plan);
    }
  }

  /**
   * Corrects what a session was opened with.
   *
   * @param why in one plain clause
   * @param who the person
   * @throws UsageProblem if the session cannot have had such a job
   */
  public Amendment amend(long session, SessionChange change, String why, String who, Clock clock)
      throws LedgerFault, NotPossible, UsageProblem, FileProblem {
    Correction correction = correction(why, who, clock);
    try (LedgerView view = LedgerView.open(ledger)) {
      StoredSession stored = correction.stored(session);
      return correction.amend(session, change.of(view, stored));
    }
  }

  private Correction correction(String why, String who, Clock clock) {
    return new Correction(() -> LedgerView.open(ledger), this::write, why, who, clock);
  }

  private long write(List<EntryBody> bodies) throws LedgerFault, NotPossible {
    try {
      return writer.write(ledger, bodies);
    } catch (UsageProblem notNow) {
      throw new NotPossible(notNow.getMessage());
    }
  }

  /** Everything that is known of a session besides its readings. */
  public OpenedSession session(long id) throws LedgerFault, UsageProblem {
    try (LedgerView view = LedgerView.open(ledger)) {
      return OpenedSession.of(view, id);
    }
  }

  /** Up to one more than is wanted, which tells whether there are more. */
  private static List<SessionLine> found(
      LedgerView view, Predicate<SessionLine> wanted, long before, int most) throws LedgerFault {
    Map<String, String> gauges = new HashMap<>();
    List<SessionLine> found = new ArrayList<>();
    long next = before;
    while (found.size() <= most) {
      List<Entry> page = new ArrayList<>(view.sessionsBefore(next, AT_ONCE));
      if (page.isEmpty()) {
        return found;
      }
      next = page.get(0).seq();
      Collections.reverse(page);
      for (Entry entry : page) {
        SessionLine line = line(view, entry, gauges);
        if (found.size() <= most && wanted.test(line)) {
          found.add(counted(view, line));
        }
      }
    }
    return found;
  }

  private static SessionLine line(LedgerView view, Entry entry, Map<String, String> gauges)
      throws LedgerFault {
    SessionOpened opened = (SessionOpened) entry.body();
    String gauge = gauges.get(opened.gauge());
    if (gauge == null) {
      gauge = gaugeName(view, opened.gauge());
      gauges.put(opened.gauge(), gauge);
    }
    return new SessionLine(entry.seq(), opened, gauge, 0);
  }

  private static SessionLine counted(LedgerView view, SessionLine line) throws LedgerFault {
    return new SessionLine(line.id(), line.opened(), line.gauge(), view.countOfSession(line.id()));
  }

  static String gaugeName(LedgerView view, String sha256) throws LedgerFault {
    try {
      return new StoredJobs(view).gauge(sha256).name();
    } catch (LedgerFault damaged) {
      // A list is there to find what is damaged as well; the audit says what it is.
      return view.document(sha256).map(Document::name).orElse(sha256);
    }
  }

  private static DisplayUnit unit(StoredJobs jobs, SessionOpened opened) {
    try {
      return jobs.job(opened).displayUnit();
    } catch (LedgerFault damaged) {
      return DisplayUnit.MM;
    }
  }

  private static Reads reads(StoredJobs jobs, SessionOpened opened) {
    try {
      return jobs.gauge(opened.gauge()).reads();
    } catch (LedgerFault damaged) {
      return Reads.SIZE;
    }
  }
}
