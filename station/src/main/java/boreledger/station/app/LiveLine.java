package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.job.Job;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.Session;
import boreledger.station.session.SessionStart;
import boreledger.station.session.StoredSession;
import boreledger.station.table.Tables;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A gauge's open line, with the session that its readings go into.
 *
 * @param unfinished the session to go on with; empty to open a new one
 * @param clock the session's clock, by which the line's times are
 * @param listener who else is told of what happens
 */
record LiveLine(
    SessionStart start,
    Optional<StoredSession> unfinished,
    SittingClock clock,
    Line line,
    Consumer<GaugingEvent> listener) {
  /**
   * Reads the files, looks for an unfinished session, and opens the line.
   *
   * @param asker the option that says what is measured, for messages
   */
  static LiveLine open(LiveRequest request, Typing typing, Job job, Tables tables, String asker)
      throws FileProblem, UsageProblem, LineFault, LedgerFault {
    LiveSource source = LiveSource.of(request, typing, job);
    SessionStart start =
        new SessionStart(
            job,
            tables,
            source.gauge(),
            request.measure(),
            Measuring.ring(job, source.gauge(), request.measure(), request.ring(), asker),
            request.settingTempC(),
            request.blockTempC(),
            source.words());
    Optional<StoredSession> unfinished = unfinished(request, start);
    SittingClock clock = clock(unfinished).atSpeed(source.speed());
    Line line = source.open(clock);
    if (request.record() != null) {
      line = Recording.of(line, request.record(), start, clock);
    }
    return new LiveLine(start, unfinished, clock, line, source.listener());
  }

  /** Opens the session, or goes on with the unfinished one. */
  Session session(Ledger ledger) throws LedgerFault {
    return unfinished.isPresent()
        ? Session.resume(ledger, start, clock, unfinished.get(), clock.nowTS())
        : Session.open(ledger, start, clock);
  }

  private static SittingClock clock(Optional<StoredSession> unfinished) {
    return unfinished.isPresent()
        ? SittingClock.goingOn(unfinished.get(), Clock.systemUTC(), System::nanoTime)
        : SittingClock.fromNow(Clock.systemUTC(), System::nanoTime);
  }

  /**
   * The session to go on with: the latest of the same job and measure, if it is not finished. One
   * from another ledger goes on there.
   */
  private static Optional<StoredSession> unfinished(LiveRequest request, SessionStart start)
      throws LedgerFault, UsageProblem {
    Optional<LedgerView> ledger =
        request.fresh() ? Optional.empty() : LedgerView.openIfAny(request.ledger());
    if (ledger.isEmpty()) {
      return Optional.empty();
    }
    Optional<StoredSession> latest;
    try (LedgerView view = ledger.get()) {
      latest = latest(view, request, start).filter(session -> !session.ended());
    }
    if (latest.isPresent()) {
      refuseIfChanged(latest.get(), start);
    }
    return latest;
  }

  private static Optional<StoredSession> latest(
      LedgerView view, LiveRequest request, SessionStart start) throws LedgerFault {
    List<Entry> openings = new ArrayList<>(view.sessions());
    Collections.reverse(openings);
    for (Entry opening : openings) {
      SessionOpened opened = (SessionOpened) opening.body();
      if (opened.jobName().equals(start.job().name())
          && opened.measure() == request.measure()
          && Objects.equals(opened.ring(), request.ring())
          && !view.isImported(opening.seq())) {
        return Optional.of(StoredSession.withoutSamples(view, opening));
      }
    }
    return Optional.empty();
  }

  private static void refuseIfChanged(StoredSession session, SessionStart start)
      throws UsageProblem {
    String changed = null;
    if (!session.job().equals(start.job().source().sha256())) {
      changed = "the job file";
    } else if (!session.opened().gauge().equals(start.gauge().source().sha256())) {
      changed = "the gauge profile";
    }
    if (changed != null) {
      throw new UsageProblem(
          String.format(
              Locale.ROOT,
              "session %d is unfinished and %s has changed since it was opened; go on with the old"
                  + " one, or open a new session with --new",
              session.id(),
              changed));
    }
  }
}
