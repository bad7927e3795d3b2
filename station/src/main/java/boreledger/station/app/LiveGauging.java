package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.LineFault;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingRun;
import boreledger.station.gauging.SideGauge;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.session.Session;
import boreledger.station.table.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Gauges from live lines: everything is read and the lines are up before the ledger is touched. */
public final class LiveGauging implements AutoCloseable {
  private final LiveRequest request;
  private final List<LiveLine> lines = new ArrayList<>();

  private LiveGauging(LiveRequest request) {
    this.request = request;
  }

  /** Reads the files, looks for unfinished sessions, and opens the lines. */
  public static LiveGauging prepare(LiveRequest request)
      throws FileProblem, UsageProblem, LineFault, LedgerFault {
    return prepare(request, Typing.STANDARD_INPUT);
  }

  /** The same with the values of a gauge that types from elsewhere. */
  public static LiveGauging prepare(LiveRequest request, Typing typing)
      throws FileProblem, UsageProblem, LineFault, LedgerFault {
    Tables tables = Tables.inForce();
    Job job = new JobFiles(tables).read(request.job());
    LiveGauging gauging = new LiveGauging(request);
    boolean ready = false;
    try {
      gauging.lines.add(LiveLine.open(request, typing, job, tables, "--measure"));
      for (LiveRequest also : request.alsoAsked()) {
        gauging.lines.add(LiveLine.open(also, typing, job, tables, "--also"));
      }
      ready = true;
    } finally {
      if (!ready) {
        gauging.close();
      }
    }
    return gauging;
  }

  /**
   * Gauges until the plan is done or the run is stopped.
   *
   * @return the results of the sessions
   * @throws LineFault if the main gauge's line broke; what was acknowledged is kept
   */
  public JobResults run(Play play) throws LedgerFault, LineFault {
    LiveLine main = lines.get(0);
    try (Ledger ledger = Ledger.openOrCreate(request.ledger())) {
      Session session = main.session(ledger);
      Consumer<GaugingEvent> watcher = play.watcher().andThen(main.listener());
      List<SideGauge> sides =
          lines.stream()
              .skip(1)
              .map(each -> new SideGauge(each.start(), each.line(), () -> each.session(ledger)))
              .toList();
      boolean resumed = main.unfinished().isPresent();
      GaugingRun run =
          GaugingRun.live(session, main.line(), resumed, main.clock()::nowTS, sides, watcher);
      play.run(run);
      if (run.fault().isPresent()) {
        throw run.fault().get();
      }
      List<Long> sessions = new ArrayList<>(List.of(session.id()));
      sides.forEach(side -> side.session().ifPresent(each -> sessions.add(each.id())));
      try (LedgerView view = ledger.view()) {
        return new StoredJobs(view).results(sessions);
      }
    }
  }

  @Override
  public void close() {
    lines.forEach(each -> each.line().close());
  }
}
