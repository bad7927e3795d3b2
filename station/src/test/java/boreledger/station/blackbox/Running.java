package boreledger.station.blackbox;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A process of the program that is still running. Its standard error is read as it comes: lines
 * that begin with {@code taken} are acknowledgements.
 */
final class Running implements AutoCloseable {
  private static final Pattern BEGUN = Pattern.compile("^(opened|resumed) session \\d+ of .*");
  private static final Pattern TAKEN = Pattern.compile("^taken .*\\bentry (\\d+).*");

  private final List<String> args;
  private final Process process;
  private final Path stdout;
  private final Thread reader;
  private final List<String> lines = new ArrayList<>();
  private final List<Long> entries = new ArrayList<>();
  private final AtomicInteger killAtTaken = new AtomicInteger(Integer.MAX_VALUE);
  private volatile long nanosFromTakenToKill = -1;

  private Running(List<String> args, Process process, Path stdout) {
    this.args = args;
    this.process = process;
    this.stdout = stdout;
    reader = new Thread(this::readErrors, "acknowledgements");
    reader.setDaemon(true);
    reader.start();
  }

  static Running start(Path folder, List<String> args) {
    try {
      Path stdout = Files.createTempFile(folder, "running", ".out");
      Process process = Program.process(args).redirectOutput(stdout.toFile()).start();
      return new Running(args, process, stdout);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  long pid() {
    return process.pid();
  }

  boolean isAlive() {
    return process.isAlive();
  }

  /** How many acknowledgements have been read so far. */
  synchronized int taken() {
    return entries.size();
  }

  /** The entry numbers of the acknowledgements read so far. */
  synchronized List<Long> entries() {
    return List.copyOf(entries);
  }

  /** Whether it said that it gauges: from then on no byte on the line is lost. */
  synchronized boolean hasBegun() {
    return lines.stream().anyMatch(line -> BEGUN.matcher(line).matches());
  }

  /**
   * Arms the reader: the moment it sees this acknowledgement it kills the process; at once when it
   * has seen it already, for bytes that the one before left on the line.
   */
  synchronized void killAtTaken(int count) {
    killAtTaken.set(count);
    if (entries.size() >= count) {
      kill();
    }
  }

  /** Time from reading the acknowledgement to the kill, -1 when that has not happened. */
  long nanosFromTakenToKill() {
    return nanosFromTakenToKill;
  }

  /** Kills now, as {@code kill -9} does. */
  void kill() {
    process.destroyForcibly();
  }

  /** Asks it to end, as the interrupt key does. */
  void interrupt() {
    try {
      new ProcessBuilder("kill", "-INT", Long.toString(pid())).start().waitFor();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  boolean awaitTaken(int count, Duration most) {
    return Watched.within(most, () -> taken() >= count || !process.isAlive()) && taken() >= count;
  }

  /** Waits until the process has ended and everything it printed has been read. */
  Outcome end(Duration most) {
    try {
      if (!process.waitFor(most.toMillis(), TimeUnit.MILLISECONDS)) {
        throw new AssertionError("still running after " + most + ": " + this);
      }
      reader.join(10_000);
      return new Outcome(
          args, process.exitValue(), Files.readString(stdout), String.join("\n", errors()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted", e);
    }
  }

  private synchronized List<String> errors() {
    return List.copyOf(lines);
  }

  private void readErrors() {
    try (BufferedReader errors = process.errorReader(StandardCharsets.UTF_8)) {
      for (String line = errors.readLine(); line != null; line = errors.readLine()) {
        note(line, System.nanoTime());
      }
    } catch (IOException e) {
      synchronized (this) {
        lines.add("(standard error broke off: " + e.getMessage() + ")");
      }
    }
  }

  private synchronized void note(String line, long readAtNanos) {
    lines.add(line);
    Matcher taken = TAKEN.matcher(line);
    if (!taken.matches()) {
      return;
    }
    entries.add(Long.parseLong(taken.group(1)));
    if (entries.size() == killAtTaken.get()) {
      kill();
      nanosFromTakenToKill = System.nanoTime() - readAtNanos;
    }
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }

  @Override
  public String toString() {
    return String.join(" ", args) + "\n" + String.join("\n", errors());
  }
}
