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
import boreledger.station.ledger.EntryBody.OfFiling;
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
 * after the commit. {@link #stop}, {@link #confirm} and {@link #keep} may be called from any
 * thread.
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
  private final Queue<Outcome.Held> confirmed = new ConcurrentLinkedQueue<>();
  private final Errands errands = new Errands();
  private volatile boolean stopped;
  private final LineWatch watch = new LineWatch();
  private LineFault fault;

  private GaugingRun(
      Session session,
      Line line,
      boolean resumed,
      boolean toTheLinesEnd,
      List<SideGauge> sides,
      Consumer<GaugingEvent> watcher) {
    this.session = session;
    this.line = line;
    this.resumed = resumed;
    this.toTheLinesEnd = toTheLinesEnd;
    this.sides = List.copyOf(sides);
    this.watcher = watcher;
  }

  /** A run on a live line, which is over when the plan is done. */
  public static GaugingRun live(
      Session session, Line line, boolean resumed, Consumer<GaugingEvent> watcher) {
    return live(session, line, resumed, List.of(), watcher);
  }

  /** The same, with further gauges whose names differ; it closes their lines too. */
  public static GaugingRun live(
      Session session,
      Line line,
      boolean resumed,
      List<SideGauge> sides,
      Consumer<GaugingEvent> watcher) {
    return new GaugingRun(session, line, resumed, false, sides, watcher);
  }

  /** A run on recorded bytes, all of which are accounted for, beyond the plan's end too. */
  public static GaugingRun recorded(Session session, Line line, Consumer<GaugingEvent> watcher) {
    return new GaugingRun(session, line, false, true, List.of(), watcher);
  }

  /**
   * Runs to the end.
   *
   * @throws LedgerFault if something could not be kept; what was acknowledged before is
   */
  public Ending run() throws LedgerFault {
    watcher.accept(
        new GaugingEvent.Began(session.start(), session.id(), resumed, line.notes(), progress()));
    Plausible plausible = session.start().plausible();
    Gauge gauge =
        new Gauge(
            session.start().gauge(), new PlausibleWindow(plausible.lowMm(), plausible.highMm()));
    Thread reader = reader(gauge).start();
    sides.forEach(side -> side.start(queue));
    try {
      Ending ending = toTheEnd(reader);
      takeRestOfSides();
      watcher.accept(new GaugingEvent.Over(ending, progress()));
      return ending;
    } catch (LedgerFault e) {
      watcher.accept(new GaugingEvent.Over(Ending.LEDGER_FAILED, progress()));
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

  /** Takes a held value after all, if its position still waits. */
  public void confirm(Outcome.Held held) {
    confirmed.add(held);
  }

  /**
   * Keeps what was filed meanwhile, between two readings.
   *
   * @param ledger where it belongs
   * @return the entry's number when it is written, or the fault that kept it from being; empty when
   *     this run writes into another ledger
   */
  public Optional<CompletableFuture<Long>> keep(Path ledger, OfFiling body) {
    return session.writesInto(ledger) ? Optional.of(errands.ask(body)) : Optional.empty();
  }

  /** What broke the line; empty when nothing did. */
  public Optional<LineFault> fault() {
    return Optional.ofNullable(fault);
  }

  private Ending toTheEnd(Thread reader) throws LedgerFault {
    Optional<Ending> ending = Optional.empty();
    while (ending.isEmpty()) {
      try {
        // Asked before the look into the queue, so that its last word is not missed.
        boolean reading = reader.isAlive();
        Optional<QueueItem> item = queue.poll(LOOK_UP);
        if (item.isEmpty() && !reading) {
          throw new IllegalStateException("the thread that reads " + line.name() + " has died");
        }
        takeConfirmed();
        errands.run(session);
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

  private void takeConfirmed() throws LedgerFault {
    for (Outcome.Held held = confirmed.poll(); held != null; held = confirmed.poll()) {
      if (session.next().equals(Optional.of(held.position()))) {
        said(session.confirm(held));
      }
    }
  }

  /** What further gauges had said before the end is kept, although the run is over. */
  private void takeRestOfSides() throws LedgerFault {
    boolean interrupted = Thread.interrupted();
    try {
      Optional<QueueItem> item = queue.poll(Duration.ZERO);
      while (item.isPresent()) {
        Optional<SideGauge> side = side(item.get());
        if (side.isPresent()) {
          side.get().handle(item.get(), watcher);
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
      side.get().handle(item, watcher);
      return doneLive();
    }
    if (item instanceof QueueItem.Said said) {
      hear(said.event());
      return doneLive();
    }
    if (item instanceof QueueItem.Gone gone) {
      session.lineBroke(gone.tS(), gone.why());
      watcher.accept(new GaugingEvent.LineGone(gone.why(), progress()));
      return Optional.empty();
    }
    if (item instanceof QueueItem.Back back) {
      session.lineBroke(back.tS(), back.how());
      watcher.accept(new GaugingEvent.LineBack(back.how(), progress()));
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
      watch.hear(event).ifPresent(what -> watcher.accept(new GaugingEvent.Noticed(what)));
    }
    if (event instanceof GaugeEvent.Live live) {
      watcher.accept(new GaugingEvent.Live(live.sample()));
    } else if (event instanceof GaugeEvent.Picks picks) {
      said(toTheLinesEnd ? session.offer(picks.pick()) : watch.offer(session, picks.pick()));
    } else if (event instanceof GaugeEvent.Bad bad) {
      said(session.refuse(bad.rejected()));
    }
  }

  private void said(Outcome outcome) {
    watcher.accept(new GaugingEvent.Said(outcome, progress()));
  }

  private Progress progress() {
    return new Progress(session.next().orElse(null), session.done(), session.planned());
  }
}
