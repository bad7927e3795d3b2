package boreledger.drivers.queue;

import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.AskSpec;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * The thread that reads one line: what the line says goes through the gauge and into the queue,
 * until the line ends or breaks, the queue is closed, or the thread is interrupted.
 *
 * <ul>
 *   <li>It owns the line while it runs and closes it at the end.
 *   <li>A line that goes and is waited for accounts for what was unfinished as no reading.
 *   <li>A line that breaks still completes what was read whole before: the break travels behind it.
 *   <li>A fault of the program while reading travels like a break, so that no reader stops unseen.
 *   <li>A gauge that wants to be asked is asked on this thread, between reads; an answer that does
 *       not come is told as a rejection without bytes.
 * </ul>
 */
public final class GaugeReader implements Runnable {
  private static final Duration READ_TIMEOUT = Duration.ofMillis(200);

  private final String name;
  private final Line line;
  private final Gauge gauge;
  private final CaptureQueue queue;
  private final Asking asking;
  private double lastTS;

  /**
   * A reader that has not begun and only listens.
   *
   * @param name the name under which the session knows the gauge
   */
  public GaugeReader(String name, Line line, Gauge gauge, CaptureQueue queue) {
    this(name, line, gauge, queue, null);
  }

  /**
   * A reader that has not begun.
   *
   * @param name the name under which the session knows the gauge
   * @param ask how the gauge is asked for values; null to only listen, as to a line that cannot be
   *     asked
   */
  public GaugeReader(String name, Line line, Gauge gauge, CaptureQueue queue, AskSpec ask) {
    this.name = name;
    this.line = line;
    this.gauge = gauge;
    this.queue = queue;
    asking = ask == null || !line.canBeAsked() ? null : new Asking(ask);
  }

  /**
   * Asks the gauge for a value as soon as its line is free; several calls before that are one. Any
   * thread may call it.
   *
   * @return whether the gauge can be asked
   */
  public boolean trigger() {
    if (asking == null) {
      return false;
    }
    asking.trigger();
    return true;
  }

  /** Starts reading on a daemon thread of its own. */
  public Thread start() {
    Thread thread = new Thread(this, "line of " + name);
    thread.setDaemon(true);
    thread.start();
    return thread;
  }

  /** Reads on the calling thread. */
  @Override
  public void run() {
    try (line) {
      readAll();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void readAll() throws InterruptedException {
    try {
      boolean more = ask();
      while (more) {
        more = take(line.read(patience())) && ask();
      }
    } catch (LineFault fault) {
      broke(fault);
    } catch (RuntimeException e) {
      queue.put(new QueueItem.Broke(name, lastTS, gaveUp(e)));
    }
  }

  /** A break completes what was whole and accounts for the rest; only then comes the fault. */
  private void broke(LineFault fault) throws InterruptedException {
    try {
      say(gauge.feed(new LineEvent.Cut(lastTS)));
    } catch (RuntimeException e) {
      fault.addSuppressed(gaveUp(e));
    }
    queue.put(new QueueItem.Broke(name, lastTS, fault));
  }

  private LineFault gaveUp(RuntimeException e) {
    return new LineFault(line.name() + ": reading was given up, " + e, e);
  }

  /** Sends a request that is due, and tells of an answer that is overdue; false to stop. */
  private boolean ask() throws LineFault, InterruptedException {
    if (asking == null) {
      return true;
    }
    Optional<Rejected> overdue = asking.overdue(lastTS);
    if (overdue.isPresent() && !say(List.of(new GaugeEvent.Bad(overdue.get())))) {
      return false;
    }
    Optional<Bytes> request = asking.due(lastTS);
    if (request.isPresent()) {
      line.send(request.get());
    }
    return true;
  }

  private Duration patience() {
    return asking == null ? READ_TIMEOUT : asking.patience(lastTS, READ_TIMEOUT);
  }

  /** Takes what the line said; false when there is nothing more to read, or nobody to read for. */
  private boolean take(LineEvent event) throws InterruptedException {
    lastTS = event.tS();
    boolean open = tell(event);
    if (event.isLast()) {
      queue.put(new QueueItem.Ended(name, lastTS));
      return false;
    }
    return open && !queue.isClosed() && !Thread.currentThread().isInterrupted();
  }

  /** Puts what a line event brings into the queue; false when the queue is closed. */
  private boolean tell(LineEvent event) throws InterruptedException {
    boolean comesOrGoes = event instanceof LineEvent.Gone || event instanceof LineEvent.Back;
    List<GaugeEvent> events = comesOrGoes ? List.of() : gauge.feed(event);
    if (asking != null) {
      asking.heard(event, events);
    }
    if (event instanceof LineEvent.Gone gone) {
      List<GaugeEvent> atAnEnd = gauge.feed(new LineEvent.Cut(gone.tS()));
      return say(Break.unfinished(atAnEnd))
          && queue.put(new QueueItem.Gone(name, gone.tS(), gone.why()));
    } else if (event instanceof LineEvent.Back back) {
      return queue.put(new QueueItem.Back(name, back.tS(), back.how()));
    }
    return say(events);
  }

  private boolean say(List<GaugeEvent> events) throws InterruptedException {
    for (GaugeEvent event : events) {
      if (!queue.put(new QueueItem.Said(name, event))) {
        return false;
      }
    }
    return true;
  }
}
