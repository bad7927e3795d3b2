package boreledger.station.bench.model;

import boreledger.station.gauging.GaugingEvent;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Hands events over from the run's thread to the screen's. However many come, at most one hand-over
 * waits at the screen; of live values only so many are kept until then, and the newest always.
 */
final class Mailbox {
  static final int MOST_LIVE = 2000;

  private final Executor screen;
  private final Consumer<List<GaugingEvent>> reader;
  private final Deque<GaugingEvent> waiting = new ArrayDeque<>();
  private int live;
  private boolean called;

  Mailbox(Executor screen, Consumer<List<GaugingEvent>> reader) {
    this.screen = screen;
    this.reader = reader;
  }

  void put(GaugingEvent event) {
    if (add(event)) {
      screen.execute(this::handOver);
    }
  }

  private synchronized boolean add(GaugingEvent event) {
    if (isLive(event)) {
      if (live >= MOST_LIVE && !waiting.isEmpty() && isLive(waiting.peekLast())) {
        waiting.removeLast();
      } else {
        live++;
      }
    }
    waiting.addLast(event);
    boolean call = !called;
    called = true;
    return call;
  }

  private static boolean isLive(GaugingEvent event) {
    return event instanceof GaugingEvent.Live
        || event instanceof GaugingEvent.Beside beside && isLive(beside.event());
  }

  private void handOver() {
    reader.accept(take());
  }

  private synchronized List<GaugingEvent> take() {
    List<GaugingEvent> events = List.copyOf(waiting);
    waiting.clear();
    live = 0;
    called = false;
    return events;
  }
}
