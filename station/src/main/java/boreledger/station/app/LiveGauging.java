package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingRun;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.session.Session;
import boreledger.station.session.SessionStart;
import boreledger.station.session.StoredSession;
import boreledger.station.table.Tables;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/** Gauges from a live line: everything is read and the line is up before the ledger is touched. */
public final class LiveGauging implements AutoCloseable {
  private final LiveRequest request;
  private final SessionStart start;
  private final Optional<StoredSession> unfinished;
  private final SittingClock clock;
  private final Line line;
  private final Consumer<GaugingEvent> listener;

  private LiveGauging(
      LiveRequest request,
      SessionStart start,
      Optional<StoredSession> unfinished,
      SittingClock clock,
      Line line,
      Consumer<GaugingEvent> listener) {
    this.request = request;
    this.start = start;
    this.unfinished = unfinished;
    this.clock = clock;
    this.line = line;
    this.listener = listener;
  }

  /** Reads the files, looks for an unfinished session, and opens the line. */
  public static LiveGauging prepare(LiveRequest request)
      throws FileProblem, UsageProblem, LineFault, LedgerFault {
    Tables tables = Tables.inForce();
    Job job = new JobFiles(tables).read(request.job());
    LiveSource source = LiveSource.of(request, job);
    SessionStart start =
        new SessionStart(
            job,
            tables,
            source.gauge(),
            request.measure(),
            Measuring.ring(job, source.gauge(), request.measure(), request.ring(), "--measure"),
            request.settingTempC(),
            request.blockTempC(),
            source.words());
    Optional<StoredSession> unfinished = unfinished(request, start);
    SittingClock clock = clock(unfinished).atSpeed(source.speed());
    Line line = source.open(clock);
    if (request.record() != null) {
      line = Recording.of(line, request.record(), start, clock);
    }
    return new LiveGauging(request, start, unfinished, clock, line, source.listener());
  }

  /**
   * Gauges until the plan is done or the run is stopped.
   *
   * @return the results of the session
   * @throws LineFault if the line broke; what was acknowledged is kept
   */
  public JobResults run(Play play) throws LedgerFault, LineFault {
    try (Ledger ledger = Ledger.openOrCreate(request.ledger())) {
      Session session =
          unfinished.isPresent()
              ? Session.resume(ledger, start, clock, unfinished.get(), clock.nowTS())
              : Session.open(ledger, start, clock);
      Consumer<GaugingEvent> watcher = play.watcher().andThen(listener);
      GaugingRun run = GaugingRun.live(session, line, unfinished.isPresent(), watcher);
      play.run(run);
      if (run.fault().isPresent()) {
        throw run.fault().get();
      }
      try (LedgerView view = ledger.view()) {
        return new StoredJobs(view).results(List.of(session.id()));
      }
    }
  }

  @Override
  public void close() {
    line.close();
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
      List<StoredSession> own = new ArrayList<>();
      for (StoredSession session : StoredSession.all(view)) {
        if (!view.isImported(session.id())) {
          own.add(session);
        }
      }
      latest =
          own.stream()
              .filter(session -> session.opened().jobName().equals(start.job().name()))
              .filter(session -> session.opened().measure() == request.measure())
              .filter(session -> Objects.equals(session.opened().ring(), request.ring()))
              .reduce((earlier, later) -> later)
              .filter(session -> !session.ended());
    }
    if (latest.isPresent()) {
      refuseIfChanged(latest.get(), start);
    }
    return latest;
  }

  private static void refuseIfChanged(StoredSession session, SessionStart start)
      throws UsageProblem {
    String changed = null;
    if (!session.opened().job().equals(start.job().source().sha256())) {
      changed = "the job file";
    } else if (!session.opened().gauge().equals(start.gauge().source().sha256())) {
      changed = "the gauge profile";
    }
    if (changed != null) {
      throw new UsageProblem(
          String.format(
              "session %d is unfinished and %s has changed since it was opened; go on with the old"
                  + " one, or open a new session with --new",
              session.id(), changed));
    }
  }
}
