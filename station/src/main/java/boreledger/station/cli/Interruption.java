package boreledger.station.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Turns an interrupt (Ctrl-C, or a request to end) into an orderly stop: work that said how it is
 * stopped is told so, what it has to say still goes out, and then the program ends with its own
 * exit status instead of the signal's. A command that said nothing is simply ended.
 */
final class Interruption {
  private static final long LONGEST_WAIT_S = 20;

  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile Runnable stop;
  private volatile int status;

  /** An interruption that this program's interrupts lead to. */
  static Interruption ofThisProgram() {
    Interruption interruption = new Interruption();
    Thread hook = new Thread(interruption::interrupted, "interruption");
    Runtime.getRuntime().addShutdownHook(hook);
    return interruption;
  }

  /** Says how the work at hand is stopped. */
  void stopBy(Runnable stopping) {
    stop = stopping;
  }

  /** The program has said everything and ends with this status. */
  void endedWith(int exitStatus) {
    status = exitStatus;
    stop = null;
    ended.countDown();
  }

  private void interrupted() {
    Runnable stopping = stop;
    if (stopping == null) {
      return;
    }
    stopping.run();
    try {
      if (ended.await(LONGEST_WAIT_S, TimeUnit.SECONDS)) {
        Runtime.getRuntime().halt(status);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
