package boreledger.drivers.queue;

import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.List;

/**
 * The thread that reads one line: what the line says goes through the gauge and into the queue,
 * until the line ends or breaks, the queue is closed, or the thread is interrupted.
 *
 * <ul>
 *   <li>It owns the line while it runs and closes it at the end.
 *   <li>A line that goes and is waited for accounts for what was unfinished as no reading.
 *   <li>A line that breaks still completes what was read whole before: the break travels behind it.
 *   <li>A fault of the program while reading travels like a break, so that no reader stops unseen.
 * </ul>
 */
public final class GaugeReader implements Runnable {
  private static final Duration READ_TIMEOUT = Duration.ofMillis(200);

  private final String name;
  private final Line line;
  private final Gauge gauge;
  private final CaptureQueue queue;
  private double lastTS;

  /**
   * A reader that has not begun.
   *
   * @param name the name under which the session knows the gauge
   */
  public GaugeReader(String name, Line line, Gauge gauge, CaptureQueue queue) {
    this.name = name;
    this.line = line;
    this.gauge = gauge;
    this.queue = queue;
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
      LineEvent event = line.read(READ_TIMEOUT);
      while (take(event)) {
        event = line.read(READ_TIMEOUT);
      }
    } catch (LineFault fault) {
      // An end completes what was whole and accounts for the rest; only then comes the fault.
      say(gauge.feed(new LineEvent.End(lastTS)));
      queue.put(new QueueItem.Broke(name, lastTS, fault));
    } catch (RuntimeException e) {
      LineFault fault = new LineFault(line.name() + ": reading was given up, " + e, e);
      queue.put(new QueueItem.Broke(name, lastTS, fault));
    }
  }

  /** Takes what the line said; false when there is nothing more to read, or nobody to read for. */
  private boolean take(LineEvent event) throws InterruptedException {
    lastTS = event.tS();
    boolean open = tell(event);
    if (event instanceof LineEvent.End) {
      queue.put(new QueueItem.Ended(name, lastTS));
      return false;
    }
    return open && !queue.isClosed() && !Thread.currentThread().isInterrupted();
  }

  /** Puts what a line event brings into the queue; false when the queue is closed. */
  private boolean tell(LineEvent event) throws InterruptedException {
    if (event instanceof LineEvent.Gone gone) {
      List<GaugeEvent> atAnEnd = gauge.feed(new LineEvent.End(gone.tS()));
      return say(Break.unfinished(atAnEnd))
          && queue.put(new QueueItem.Gone(name, gone.tS(), gone.why()));
    } else if (event instanceof LineEvent.Back back) {
      return queue.put(new QueueItem.Back(name, back.tS(), back.how()));
    }
    return say(gauge.feed(event));
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
