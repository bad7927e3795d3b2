package boreledger.drivers.line;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleSupplier;

/**
 * A line that is waited for when it breaks: a cable that comes off, a gauge that sleeps, a network
 * that is away.
 *
 * <ul>
 *   <li>Where the line beneath breaks it answers {@link LineEvent.Gone}, and {@link LineEvent.Back}
 *       once the line is there again; it never throws.
 *   <li>It looks for the line at once and then again after 0.1 s, 0.2 s and so on, at last every
 *       second.
 *   <li>A reason why what is there cannot be opened is told as another {@code Gone} when it came
 *       {@value #TRIES_BEFORE_TELLING} times in a row, and once only: a port that is just being
 *       made may refuse for a moment.
 *   <li>A request to a line that has gone is not sent.
 * </ul>
 */
public final class ReconnectingLine implements Line {
  private static final long FIRST_WAIT_NS = TimeUnit.MILLISECONDS.toNanos(100);
  private static final long LONGEST_WAIT_NS = TimeUnit.SECONDS.toNanos(1);
  private static final int TRIES_BEFORE_TELLING = 3;

  private final Opening opening;
  private final DoubleSupplier clockS;
  private final Object changes = new Object();
  private volatile Line line;
  private volatile boolean closed;
  private volatile boolean sendingFailed;
  private boolean up = true;
  private long waitNs;
  private long nextTryNs;
  private String refusal;
  private int refusals;
  private String told;

  /**
   * A line that is up.
   *
   * @param opening the way to the same line when it has gone
   * @param clockS the clock of the line's events, in seconds
   */
  public ReconnectingLine(Line line, Opening opening, DoubleSupplier clockS) {
    this.line = line;
    this.opening = opening;
    this.clockS = clockS;
  }

  @Override
  public String name() {
    return line.name();
  }

  @Override
  public List<String> notes() {
    return line.notes();
  }

  @Override
  public LineEvent read(Duration timeout) {
    if (closed) {
      return new LineEvent.End(clockS.getAsDouble());
    }
    if (!up) {
      return lookFor(timeout);
    }
    try {
      if (!sendingFailed) {
        return line.read(timeout);
      }
    } catch (LineFault gone) {
      // Told below; what broke the line does not matter to whoever waits for it.
    }
    return gone();
  }

  @Override
  public void send(Bytes request) {
    try {
      line.send(request);
    } catch (LineFault fault) {
      sendingFailed = true;
    }
  }

  @Override
  public void close() {
    synchronized (changes) {
      closed = true;
      line.close();
      changes.notifyAll();
    }
  }

  private LineEvent gone() {
    double tS = clockS.getAsDouble();
    if (closed) {
      return new LineEvent.End(tS);
    }
    line.close();
    up = false;
    waitNs = FIRST_WAIT_NS;
    nextTryNs = System.nanoTime();
    refusals = 0;
    told =
        line.name()
            + ": the gauge, its cable or its radio link has gone; waiting for it to come back";
    return new LineEvent.Gone(tS, told);
  }

  private LineEvent lookFor(Duration timeout) {
    if (waitUntilNextTry(timeout)) {
      try {
        Optional<Line> opened = opening.tryOpen();
        refusals = 0;
        if (opened.isPresent()) {
          return back(opened.get());
        }
      } catch (LineFault fault) {
        Optional<LineEvent> news = refused(fault.getMessage());
        if (news.isPresent()) {
          return news.get();
        }
      }
    }
    double tS = clockS.getAsDouble();
    return closed ? new LineEvent.End(tS) : new LineEvent.Quiet(tS);
  }

  /** Whether it is time to look; false when the timeout was shorter, or the line was closed. */
  private boolean waitUntilNextTry(Duration timeout) {
    long endNs = System.nanoTime() + timeout.toNanos();
    synchronized (changes) {
      try {
        long leftNs = Math.min(endNs, nextTryNs) - System.nanoTime();
        while (!closed && leftNs > 0) {
          TimeUnit.NANOSECONDS.timedWait(changes, leftNs);
          leftNs = Math.min(endNs, nextTryNs) - System.nanoTime();
        }
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return false;
      }
    }
    if (closed || System.nanoTime() < nextTryNs) {
      return false;
    }
    nextTryNs = System.nanoTime() + waitNs;
    waitNs = Math.min(2 * waitNs, LONGEST_WAIT_NS);
    return true;
  }

  private LineEvent back(Line opened) {
    synchronized (changes) {
      line = opened;
      if (closed) {
        opened.close();
        return new LineEvent.End(clockS.getAsDouble());
      }
    }
    up = true;
    sendingFailed = false;
    return new LineEvent.Back(clockS.getAsDouble(), opened.name() + ": it is back");
  }

  private Optional<LineEvent> refused(String why) {
    refusals = why.equals(refusal) ? refusals + 1 : 1;
    refusal = why;
    if (refusals < TRIES_BEFORE_TELLING || why.equals(told)) {
      return Optional.empty();
    }
    told = why;
    return Optional.of(new LineEvent.Gone(clockS.getAsDouble(), why));
  }
}
