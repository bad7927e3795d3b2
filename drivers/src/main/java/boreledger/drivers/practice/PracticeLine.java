package boreledger.drivers.practice;

import boreledger.drivers.capture.Pace;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.atomic.AtomicReference;

/**
 * The line of the practice gauge.
 *
 * <ul>
 *   <li>It does nothing at a place before it has been told of it by {@link #gauge}, and nothing
 *       more after it until it is told again: the hand waits for the station. A streaming gauge
 *       shows free air meanwhile, one that types is quiet.
 *   <li>A hand that hears nothing for {@value #PATIENCE_S} s, and at least {@value
 *       #REAL_PATIENCE_S} s of the real clock, does the last place once more.
 *   <li>The same seed and tasks give the same hand and noise, however long it waits between.
 *   <li>Times are those that the samples were due at, on the clock of its pace.
 *   <li>It ends only when it is closed, or its thread is interrupted.
 * </ul>
 */
public final class PracticeLine implements Line, Practising {
  /** How often the streaming gauge sends, unless told otherwise. */
  public static final double SAMPLES_PER_S = 10;

  private static final double PATIENCE_S = 6;
  private static final double REAL_PATIENCE_S = 2;
  private static final double AGAIN_AFTER_REAL_S = 0.3;

  private final String name;
  private final Pace pace;
  private final double startTS;
  private final double patienceS;
  private final PracticeHand hand;
  private final boolean streams;
  private final double zeroS;
  private final Queue<PracticeHand.Frame> ahead = new ArrayDeque<>();
  private final AtomicReference<PracticeTask> told = new AtomicReference<>();
  private volatile boolean closed;
  private PracticeTask last;
  private double freeSinceS;
  private double lastS;

  /**
   * A gauge in a resting hand.
   *
   * @param streams whether it sends all the time, as a bore gauge does, or types a size on demand
   * @param pace how fast time passes for it; in step with a clock
   * @param startTS what the line's clock shows now, in seconds
   */
  public PracticeLine(long seed, boolean streams, Pace pace, double startTS) {
    name = "practice gauge, seed " + seed;
    this.streams = streams;
    this.pace = pace;
    this.startTS = startTS;
    patienceS = Math.max(PATIENCE_S, REAL_PATIENCE_S * pace.speed());
    hand = new PracticeHand(seed, SAMPLES_PER_S);
    zeroS = pace.nowS();
    lastS = startTS;
    freeSinceS = startTS;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public void gauge(PracticeTask task) {
    told.set(task);
  }

  @Override
  public LineEvent read(Duration timeout) {
    if (isOver()) {
      return new LineEvent.End(lastS);
    }
    if (ahead.isEmpty()) {
      plan();
    }
    waitUntilDue(timeout);
    if (isOver()) {
      return new LineEvent.End(lastS);
    }
    PracticeHand.Frame next = ahead.peek();
    if (next == null || next.tS() > nowS()) {
      double limitS = next == null ? Double.POSITIVE_INFINITY : next.tS();
      lastS = Math.max(lastS, Math.min(nowS(), limitS));
      return new LineEvent.Quiet(lastS);
    }
    ahead.remove();
    lastS = next.tS();
    return new LineEvent.Chunk(lastS, Bytes.of(next.ascii()));
  }

  @Override
  public boolean canBeAsked() {
    return false;
  }

  @Override
  public void send(Bytes request) throws LineFault {
    throw new LineFault(name + " is asked for nothing; it gauges where it is told to");
  }

  @Override
  public void close() {
    closed = true;
  }

  private boolean isOver() {
    return closed || Thread.currentThread().isInterrupted();
  }

  private void plan() {
    PracticeTask task = nextTask();
    if (task != null) {
      ahead.addAll(hand.visit(Math.max(lastS, nowS()), task));
      last = task;
      freeSinceS = ahead.stream().mapToDouble(PracticeHand.Frame::tS).max().orElse(lastS);
    } else if (streams) {
      ahead.add(hand.air(lastS));
    }
  }

  /** What to begin with now; null for nothing. */
  private PracticeTask nextTask() {
    double restedS = nowS() - freeSinceS;
    PracticeTask wanted = told.get();
    if (wanted == null) {
      return restedS > patienceS ? last : null;
    }
    // A word about the place before may still be on its way: a second visit must not cross it.
    if (wanted.equals(last) && restedS < AGAIN_AFTER_REAL_S * pace.speed()) {
      return null;
    }
    return told.compareAndSet(wanted, null) ? wanted : null;
  }

  private double nowS() {
    return startTS + pace.nowS() - zeroS;
  }

  private void waitUntilDue(Duration timeout) {
    try {
      PracticeHand.Frame next = ahead.peek();
      if (next == null) {
        pace.sleep(Double.MAX_VALUE, timeout);
      } else if (next.tS() > nowS()) {
        pace.sleep(next.tS() - nowS(), timeout);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
