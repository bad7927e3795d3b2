package boreledger.station.bench;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.station.app.StoredJobs;
import boreledger.station.bench.model.ResultsSource;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.gauging.Wish;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.session.Outcome;
import boreledger.station.session.Session;
import boreledger.station.session.SessionStart;
import boreledger.station.session.WallClock;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A gauging run by script: real sessions in a real ledger, told to whoever watches. */
public final class ScriptedRun implements AutoCloseable, ResultsSource, Consumer<Wish> {
  private static final WallClock WALL = WallClock.from(Instant.parse("2031-05-06T08:00:00Z"));
  private static final double LIVE_STEP_S = 0.04;

  private final Ledger ledger;
  private final List<Long> sessions = new ArrayList<>();
  private final List<Outcome.Held> left = new ArrayList<>();
  private String line = "practice line, 9600 baud";
  private Consumer<GaugingEvent> watcher = event -> {};
  private Session session;
  private double tS;
  private int rocked;

  /** A run with a new ledger in a folder. */
  public ScriptedRun(Path folder) throws LedgerFault {
    ledger = Ledger.openOrCreate(folder.resolve("bench.db"));
  }

  /** Tells this watcher from now on. */
  public void watch(Consumer<GaugingEvent> newWatcher) {
    watcher = newWatcher;
  }

  /** Names the line of the sessions to come. */
  public void onLine(String name) {
    line = name;
  }

  /** Begins a session of bores. */
  public void beginBores(Job job, GaugeProfile gauge) throws LedgerFault {
    begin(new SessionStart(job, Jobs.tables(), gauge, Measure.BORE, null, 20.4, 21.3, line));
  }

  /** Begins a session of a ring's gaps. */
  public void beginGaps(Job job, GaugeProfile gauge, String ring) throws LedgerFault {
    Ring of = job.ring(ring).orElseThrow();
    begin(new SessionStart(job, Jobs.tables(), gauge, Measure.GAP, of, null, 21.3, line));
  }

  /** What a session of a ring's depths on a further gauge begins with. */
  public SessionStart besideStart(String ring) {
    Ring of = Jobs.pumphouse().ring(ring).orElseThrow();
    return new SessionStart(
        Jobs.pumphouse(),
        Jobs.tables(),
        Gauges.pressed(),
        Measure.RING_DEPTH,
        of,
        null,
        21.3,
        "another line");
  }

  /** Begins a session of a ring's depths. */
  public void beginRingDepths(Job job, GaugeProfile gauge, String ring) throws LedgerFault {
    Ring of = job.ring(ring).orElseThrow();
    begin(new SessionStart(job, Jobs.tables(), gauge, Measure.RING_DEPTH, of, null, 21.3, line));
  }

  private void begin(SessionStart start) throws LedgerFault {
    session = Session.open(ledger, start, WALL);
    sessions.add(session.id());
    watcher.accept(new GaugingEvent.Began(start, session.id(), false, List.of(), progress()));
  }

  /** What is told when the session at hand is resumed. */
  public GaugingEvent.Began resumed() {
    return new GaugingEvent.Began(session.start(), session.id(), true, List.of(), progress());
  }

  /** The gauge shows a value. */
  public void live(double valueMm) {
    tS += LIVE_STEP_S;
    watcher.accept(new GaugingEvent.Live(Gauges.sample(tS, valueMm)));
  }

  /** The gauge is rocked a few times around a smallest value. */
  public void rock(double smallestMm, int samples) {
    for (int i = 0; i < samples; i++) {
      double tiltDeg = 6.5 * Math.sin(rocked * 0.19) + 1.1 * Math.sin(rocked * 0.043);
      live(smallestMm + 96 / Math.cos(Math.toRadians(tiltDeg)) - 96);
      rocked++;
    }
  }

  /** The gauge is out of the bore. */
  public void freeAir(int samples) {
    for (int i = 0; i < samples; i++) {
      live(2.601 + 0.001 * (i % 3));
    }
  }

  /** A value is offered to the session. */
  public void offer(double valueMm, String... cautions) throws LedgerFault {
    say(session.offer(Gauges.picked(tS, valueMm, cautions)));
  }

  /** A pick rule gives no value. */
  public void notPicked(String why) throws LedgerFault {
    say(session.offer(new PickEvent.NotPicked(tS, List.of(Gauges.sample(tS, 0)), why)));
  }

  /** Values are offered until so many positions have theirs. */
  public void offerUntil(int done, double... valuesMm) throws LedgerFault {
    while (session.done() < done) {
      live(valuesMm[session.done() % valuesMm.length]);
      offer(valuesMm[session.done() % valuesMm.length]);
    }
  }

  /** The run is over. */
  public void over(Ending ending) {
    watcher.accept(new GaugingEvent.Over(ending, progress()));
  }

  /** How many positions have their reading. */
  public int done() {
    return session.done();
  }

  /** How many positions there are. */
  public int planned() {
    return session.planned();
  }

  /** The held values that were left. */
  public List<Outcome.Held> left() {
    return left;
  }

  @Override
  public Optional<JobResults> results() throws LedgerFault {
    try (LedgerView view = ledger.view()) {
      return Optional.of(new StoredJobs(view).results(List.copyOf(sessions)));
    }
  }

  @Override
  public void accept(Wish wish) {
    try {
      say(grant(wish));
    } catch (LedgerFault e) {
      throw new IllegalStateException(e);
    }
  }

  private Outcome grant(Wish wish) throws LedgerFault {
    String why = wish.by().words();
    if (wish instanceof Wish.Confirm confirm) {
      return session.confirm(confirm.held());
    } else if (wish instanceof Wish.Leave leave) {
      left.add(leave.held());
      return new Outcome.Left(leave.held());
    } else if (wish instanceof Wish.Skip) {
      return session.skip(tS, why);
    } else if (wish instanceof Wish.GoTo there) {
      return session.goTo(there.position(), tS, why);
    }
    return wish instanceof Wish.TakeBack ? session.takeBackOrRestore(tS, why) : new Outcome.Asked();
  }

  @Override
  public void close() throws LedgerFault {
    ledger.close();
  }

  private void say(Outcome outcome) {
    watcher.accept(new GaugingEvent.Said(outcome, progress()));
  }

  /** How far the plan is. */
  public Progress progress() {
    return new Progress(session.next().orElse(null), session.done(), session.planned());
  }
}
