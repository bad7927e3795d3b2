package boreledger.station.app;

import boreledger.drivers.learn.ShownValue;
import boreledger.drivers.learn.StepLearner;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.station.app.LessonEvent.Because;
import java.time.Duration;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;

/**
 * Learns a gauge at a port. One thread of its own listens, learns and tells; other threads only
 * leave it a wish.
 *
 * <p>A value and the press that goes with it may come in either order. Of several presses before a
 * value the last one counts.
 */
final class PortLesson implements GaugeLesson {
  private static final Duration TICK = Duration.ofMillis(150);

  private final LessonPort port;
  private final StepLearner learner;
  private final double patienceS;
  private final Consumer<LessonEvent> told;
  private final Queue<Runnable> wishes = new ConcurrentLinkedQueue<>();
  private final Burst burst = new Burst();
  private Because because = Because.FIRST;
  private ShownValue awaiting;
  private double sinceTS;
  private Line line;
  private boolean closed;

  PortLesson(LessonPort port, Duration patience, Consumer<LessonEvent> told) {
    this.port = port;
    this.learner = port.learner();
    this.patienceS = patience.toMillis() / 1e3;
    this.told = told;
  }

  void start() {
    Thread thread = new Thread(this::run, "gauge lesson");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void shows(ShownValue value) {
    wishes.add(
        () -> {
          awaiting = value;
          if (burst.isEmpty()) {
            told.accept(new LessonEvent.AwaitsPress(value));
          }
        });
  }

  @Override
  public void takeBack() {
    wishes.add(
        () -> {
          learner.takeBack();
          awaiting = null;
          burst.forget();
          tell();
        });
  }

  @Override
  public void tryNext() {
    wishes.add(this::giveUp);
  }

  @Override
  public void close() {
    Line open;
    synchronized (this) {
      closed = true;
      open = line;
    }
    if (open != null) {
      open.close();
    }
  }

  private void run() {
    try {
      while (!isClosed()) {
        listen();
      }
    } catch (LineFault e) {
      if (!isClosed()) {
        told.accept(new LessonEvent.Broke(e.getMessage()));
      }
    } catch (RuntimeException e) {
      // Nobody waits for this thread: untold, the lesson would seem to go on for ever.
      told.accept(new LessonEvent.Broke("the lesson was given up, " + e));
      throw e;
    }
  }

  /** Listens while one setting has its turn. */
  private void listen() throws LineFault {
    int turn = learner.turn();
    try (Line open = port.opener().open(learner.setting())) {
      if (!isOurs(open)) {
        return;
      }
      awaiting = null;
      burst.forget();
      sinceTS = Double.NaN;
      told.accept(new LessonEvent.Listening(learner.setting(), because));
      tell();
      while (!isClosed() && learner.turn() == turn) {
        step(open, turn);
      }
    }
  }

  private void step(Line open, int turn) throws LineFault {
    LineEvent event = open.read(TICK);
    if (event.isLast()) {
      if (!isClosed()) {
        throw new LineFault(open.name() + ": the other side has ended the connection");
      }
      return;
    }
    if (Double.isNaN(sinceTS)) {
      sinceTS = event.tS();
    }
    for (Runnable wish = wishes.poll(); wish != null; wish = wishes.poll()) {
      wish.run();
    }
    if (event instanceof LineEvent.Chunk chunk) {
      burst.add(chunk);
      told.accept(burst.arrived());
    }
    if (learner.turn() == turn) {
      judge(event.tS());
    }
  }

  private void judge(double nowTS) {
    if (burst.isEmpty()) {
      boolean isInVain = learner.shown().isEmpty() && nowTS - sinceTS >= patienceS;
      if (isInVain) {
        giveUp();
      }
    } else if (burst.isEndless(nowTS) && !burst.isOver(nowTS)) {
      burst.forget();
      told.accept(new LessonEvent.NeverPauses());
    } else if (awaiting != null && burst.isOver(nowTS)) {
      learn();
    }
  }

  private void learn() {
    ShownValue value = awaiting;
    int turn = learner.turn();
    awaiting = null;
    learner.pressed(burst.chunks(), value);
    burst.forget();
    because = Because.UNREADABLE;
    if (learner.turn() == turn) {
      tell();
    }
  }

  private void giveUp() {
    because = Because.SILENT;
    learner.giveUp();
  }

  private void tell() {
    told.accept(new LessonEvent.Told(learner.shown(), learner.learned()));
  }

  private synchronized boolean isOurs(Line open) {
    line = open;
    return !closed;
  }

  private synchronized boolean isClosed() {
    return closed;
  }
}
