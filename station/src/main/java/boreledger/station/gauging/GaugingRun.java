package boreledger.station.gauging;

import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.pick.PlausibleWindow;
import boreledger.drivers.profile.AskSpec;
import boreledger.drivers.queue.CaptureQueue;
import boreledger.drivers.queue.GaugeReader;
import boreledger.drivers.queue.QueueItem;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Outcome;
import boreledger.station.session.Plausible;
import boreledger.station.session.Session;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;

/**
 * Feeds a gauge into its session, and further gauges into theirs, until the plan is done, the line
 * ends or breaks, or a person stops it. A line that is waited for when it goes away does not end
 * the run.
 *
 * <p>Each line is read on a thread of its own, which ends with the run; all put into one queue, and
 * each item says whose it is. The plan is done when the main gauge's is, and so is that of every
 * further gauge that was heard of. A further gauge's line may end or break without ending the run.
 *
 * <p>The ledger is written on the thread that calls {@link #run}, and the watcher is told there,
 * after the commit. {@link #stop}, {@link #wish}, {@link #notice} and {@link #keep} may be called
 * from any thread.
 */
public final class GaugingRun {
  private static final int QUEUE_CAPACITY = 1024;
  private static final Duration LOOK_UP = Duration.ofMillis(100);

  private final Session session;
  private final Line line;
  private final boolean resumed;
  private final boolean toTheLinesEnd;
  private final List<SideGauge> sides;
  private final Consumer<GaugingEvent> watcher;
  private final CaptureQueue queue = new CaptureQueue(QUEUE_CAPACITY);
  private final Errands errands = new Errands();
  private final Queue<Word> words = new ConcurrentLinkedQueue<>();
  private final Granting granting;
  private volatile boolean stopped;
  private final LineWatch watch = new LineWatch();
  private LineFault fault;
  private GaugeReader reader;
  private boolean away;

  /** Something that another thread wants done on the one that writes the ledger. */
  private interface Word {
    void handle() throws LedgerFault;
  }

  private GaugingRun(
      Session session,
      Line line,
      boolean resumed,
      DoubleSupplier clockS,
      List<SideGauge> sides,
      Consumer<GaugingEvent> watcher) {
    this.session = session;
    this.line = line;
    this.resumed = resumed;
    this.toTheLinesEnd = clockS == null;
    this.sides = List.copyOf(sides);
    this.granting = new Granting(session, this.sides, clockS, this::ask, this::tell);
    this.watcher = watcher;
  }

  /**
   * A run on a live line, which is over when the plan is done.
   *
   * @param clockS the clock of the line and of the session, in seconds
   * @param sides further gauges whose names differ; it closes their lines too
   */
  public static GaugingRun live(
      Session session,
      Line line,
      boolean resumed,
      DoubleSupplier clockS,
      List<SideGauge> sides,
      Consumer<GaugingEvent> watcher) {
    return new GaugingRun(session, line, resumed, clockS, sides, watcher);
  }

  /** A run on recorded bytes, all of which are accounted for, beyond the plan's end too. */
  public static GaugingRun recorded(Session session, Line line, Consumer<GaugingEvent> watcher) {
    return new GaugingRun(session, line, false, null, List.of(), watcher);
  }

  /**
   * Runs to the end.
   *
   * @throws LedgerFault if something could not be kept; what was acknowledged before is
   */
  public Ending run() throws LedgerFault {
    tell(new GaugingEvent.Began(session.start(), session.id(), resumed, line.notes(), progress()));
    Plausible plausible = session.start().plausible();
    Gauge gauge =
        new Gauge(
            session.start().gauge(), new PlausibleWindow(plausible.lowMm(), plausible.highMm()));
    reader = reader(gauge);
    Thread reading = reader.start();
    sides.forEach(side -> side.start(queue));
    try {
      Ending ending = toTheEnd(reading);
      takeRestOfSides();
      tell(new GaugingEvent.Over(ending, progress()));
      return ending;
    } catch (LedgerFault e) {
      tell(new GaugingEvent.Over(Ending.LEDGER_FAILED, progress()));
      throw e;
    } finally {
      errands.end();
      queue.close();
      line.close();
      sides.forEach(SideGauge::close);
    }
  }

  /** Recorded bytes cannot be asked for more. */
  private GaugeReader reader(Gauge gauge) {
    AskSpec ask = toTheLinesEnd ? null : session.start().gauge().ask();
    return new GaugeReader(session.start().measure().word(), line, gauge, queue, ask);
  }

  /** Stops the run soon; the session can be resumed. */
  public void stop() {
    stopped = true;
  }

  /**
   * Asks for something besides gauging; the watcher is told soon what came of it. Nothing is done
   * once the run is over.
   */
  public void wish(Wish wish) {
    words.add(() -> granting.grant(wish).ifPresent(this::said));
  }

  /** Has the watcher told of something in one line, such as a foot switch that has gone. */
  public void notice(String what) {
    words.add(() -> tell(new GaugingEvent.Noticed(what)));
  }

  /**
   * Keeps what was filed or corrected meanwhile, between two readings. Corrections of a session
   * that this run has open are refused.
   *
   * @param ledger where it belongs
   * @return the last entry's number when they are written, or the fault that kept them from being;
   *     empty when this run writes into another ledger
   */
  public Optional<CompletableFuture<Long>> keep(Path ledger, List<EntryBody> bodies) {
    return session.writesInto(ledger) ? Optional.of(errands.ask(bodies)) : Optional.empty();
  }

  /** What broke the line; empty when nothing did. */
  public Optional<LineFault> fault() {
    return Optional.ofNullable(fault);
  }

  private Ending toTheEnd(Thread reading) throws LedgerFault {
    Optional<Ending> ending = Optional.empty();
    while (ending.isEmpty()) {
      try {
        // Asked before the look into the queue, so that its last word is not missed.
        boolean alive = reading.isAlive();
        Optional<QueueItem> item = queue.poll(LOOK_UP);
        if (item.isEmpty() && !alive) {
          throw new IllegalStateException("the thread that reads " + line.name() + " has died");
        }
        handleWords();
        errands.run(session, this::isOpen);
        ending = doneLive();
        if (ending.isEmpty() && item.isPresent()) {
          ending = handle(item.get());
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        stopped = true;
      }
      if (ending.isEmpty() && stopped) {
        ending = Optional.of(Ending.STOPPED);
      }
    }
    return ending.get();
  }

  private boolean isOpen(long id) {
    return session.id() == id
        || sides.stream()
            .flatMap(side -> side.session().stream())
            .anyMatch(each -> each.id() == id);
  }

  private void handleWords() throws LedgerFault {
    // Only those that are there now: a watcher may answer each with another one.
    for (int there = words.size(); there > 0; there--) {
      words.remove().handle();
    }
  }

  private Outcome ask() {
    if (away) {
      return new Outcome.NotDone("the gauge's line has gone, so it cannot be asked");
    }
    return reader.trigger()
        ? new Outcome.Asked()
        : new Outcome.NotDone(
            "the gauge cannot be asked: its profile has no [ask], or its line only speaks");
  }

  /** What further gauges had said before the end is kept, although the run is over. */
  private void takeRestOfSides() throws LedgerFault {
    boolean interrupted = Thread.interrupted();
    try {
      Optional<QueueItem> item = queue.poll(Duration.ZERO);
      while (item.isPresent()) {
        Optional<SideGauge> side = side(item.get());
        if (side.isPresent()) {
          side.get().handle(item.get(), this::tell);
        }
        item = queue.poll(Duration.ZERO);
      }
    } catch (InterruptedException e) {
      interrupted = true;
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private Optional<SideGauge> side(QueueItem item) {
    return sides.stream().filter(side -> side.name().equals(item.gauge())).findFirst();
  }

  private Optional<Ending> handle(QueueItem item) throws LedgerFault {
    Optional<SideGauge> side = side(item);
    if (side.isPresent()) {
      side.get().handle(item, this::tell);
      return doneLive();
    }
    if (item instanceof QueueItem.Said said) {
      hear(said.event());
      return doneLive();
    }
    if (item instanceof QueueItem.Gone gone) {
      away = true;
      session.lineBroke(gone.tS(), gone.why());
      tell(new GaugingEvent.LineGone(gone.why(), progress()));
      return Optional.empty();
    }
    if (item instanceof QueueItem.Back back) {
      away = false;
      session.lineBroke(back.tS(), back.how());
      tell(new GaugingEvent.LineBack(back.how(), progress()));
      return Optional.empty();
    }
    if (item instanceof QueueItem.Broke && stopped) {
      return Optional.of(Ending.STOPPED);
    }
    if (item instanceof QueueItem.Broke broke) {
      fault = broke.fault();
      session.lineBroke(broke.tS(), fault.getMessage());
      return Optional.of(Ending.LINE_BROKE);
    }
    return Optional.of(session.next().isEmpty() ? Ending.PLAN_DONE : Ending.LINE_ENDED);
  }

  private Optional<Ending> doneLive() {
    boolean done =
        session.next().isEmpty()
            && !toTheLinesEnd
            && sides.stream().noneMatch(SideGauge::isUnfinished);
    return done ? Optional.of(Ending.PLAN_DONE) : Optional.empty();
  }

  private void hear(GaugeEvent event) throws LedgerFault {
    if (!toTheLinesEnd) {
      watch.hear(event).ifPresent(what -> tell(new GaugingEvent.Noticed(what)));
    }
    if (event instanceof GaugeEvent.Live live) {
      tell(new GaugingEvent.Live(live.sample()));
    } else if (event instanceof GaugeEvent.Picks picks) {
      said(toTheLinesEnd ? session.offer(picks.pick()) : watch.offer(session, picks.pick()));
    } else if (event instanceof GaugeEvent.Bad bad) {
      said(session.refuse(bad.rejected()));
    }
  }

  private void tell(GaugingEvent event) {
    granting.hear(event);
    watcher.accept(event);
  }

  private void said(Outcome outcome) {
    tell(new GaugingEvent.Said(outcome, progress()));
  }

  private Progress progress() {
    return new Progress(session.next().orElse(null), session.done(), session.planned());
  }
}
