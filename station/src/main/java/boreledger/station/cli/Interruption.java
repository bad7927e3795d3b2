package boreledger.station.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Turns an interrupt (Ctrl-C, or a request to end) into an orderly stop: the work is told to stop,
 * what it has to say still goes out, and then the program ends with its own exit status instead of
 * the signal's.
 */
final class Interruption {
  private static final long LONGEST_WAIT_S = 20;

  private final CountDownLatch finished = new CountDownLatch(1);
  private final Thread hook;
  private volatile int status = ExitStatus.PROGRAM_FAILED;

  private Interruption(Runnable stop) {
    hook = new Thread(() -> interrupted(stop), "interruption");
  }

  static Interruption stopping(Runnable stop) {
    Interruption interruption = new Interruption(stop);
    Runtime.getRuntime().addShutdownHook(interruption.hook);
    return interruption;
  }

  /** The status to end with if the program is being interrupted. */
  void endWith(int exitStatus) {
    status = exitStatus;
  }

  /** Nothing more will be said. */
  void over() {
    finished.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The shutdown has begun: the hook runs already, and ends the program itself.
      return;
    }
  }

  private void interrupted(Runnable stop) {
    stop.run();
    try {
      if (!finished.await(LONGEST_WAIT_S, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return;
    }
    Runtime.getRuntime().halt(status);
  }
}
