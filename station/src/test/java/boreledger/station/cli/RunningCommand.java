package boreledger.station.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** A command that runs in this program while a test follows its standard error. */
final class RunningCommand {
  private static final int PATIENCE_S = 30;

  private final BlockingQueue<String> told = new LinkedBlockingQueue<>();
  private final List<String> seen = new ArrayList<>();
  private final CompletableFuture<Integer> status;

  private RunningCommand(String... words) {
    status =
        CompletableFuture.supplyAsync(
            () -> Boreledger.run(words, new PrintWriter(new StringWriter()), errors()),
            task -> new Thread(task, "command").start());
  }

  /** Starts a command; each argument is one word, paths included. */
  static RunningCommand started(Object... args) {
    return new RunningCommand(Arrays.stream(args).map(Object::toString).toArray(String[]::new));
  }

  /** Waits for a line that begins like this; answers it. */
  String tells(String beginning) throws InterruptedException {
    String line = told.poll(PATIENCE_S, TimeUnit.SECONDS);
    while (line != null) {
      seen.add(line);
      if (line.startsWith(beginning)) {
        return line;
      }
      line = told.poll(PATIENCE_S, TimeUnit.SECONDS);
    }
    throw new AssertionError("never said \"" + beginning + "\", but " + seen);
  }

  /** Waits for its end; answers the exit status. */
  int ends() throws Exception {
    return status.get(PATIENCE_S, TimeUnit.SECONDS);
  }

  private PrintWriter errors() {
    StringBuilder line = new StringBuilder();
    Writer lines =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) {
            for (int i = from; i < from + length; i++) {
              if (text[i] == '\n') {
                told.add(line.toString());
                line.setLength(0);
              } else {
                line.append(text[i]);
              }
            }
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    return new PrintWriter(lines, true);
  }
}
