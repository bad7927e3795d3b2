package boreledger.drivers.queue;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Something done on a thread of its own, which can be watched until it waits. */
final class Background<T> {
  private static final long PATIENCE_S = 30;

  private final FutureTask<T> task;
  private final Thread thread;

  private Background(Callable<T> work) {
    task = new FutureTask<>(work);
    thread = new Thread(task);
    thread.setDaemon(true);
    thread.start();
  }

  static <T> Background<T> of(Callable<T> work) {
    return new Background<>(work);
  }

  /** Returns once the thread waits for something. */
  Background<T> untilItWaits() {
    long giveUp = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
    while (thread.getState() != Thread.State.WAITING
        && thread.getState() != Thread.State.TIMED_WAITING) {
      if (task.isDone() || System.nanoTime() > giveUp) {
        throw new AssertionError("never waited: " + thread.getState());
      }
      Thread.yield();
    }
    return this;
  }

  Background<T> interrupt() {
    thread.interrupt();
    return this;
  }

  T result() throws ExecutionException, InterruptedException, TimeoutException {
    return task.get(PATIENCE_S, TimeUnit.SECONDS);
  }
}
