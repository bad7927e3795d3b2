package boreledger.station.blackbox;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Every run is a process of {@code bin/boreledger}; its output goes through files. */
final class ProcessLauncher implements Launcher {
  // Only something that hangs takes as long, however busy the machine is.
  private static final long LONGEST_S = 600;
  private final Path folder;

  ProcessLauncher() {
    this(null);
  }

  /** Runs in this working folder; null keeps that of the tests. */
  ProcessLauncher(Path folder) {
    this.folder = folder;
  }

  @Override
  public Outcome run(List<String> args) {
    try {
      Path out = Files.createTempFile("boreledger", ".out");
      Path err = Files.createTempFile("boreledger", ".err");
      try {
        int exit = runInto(args, out, err);
        return new Outcome(args, exit, Files.readString(out), Files.readString(err));
      } finally {
        Files.delete(out);
        Files.delete(err);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public int parallel() {
    return 2;
  }

  private int runInto(List<String> args, Path out, Path err) throws IOException {
    ProcessBuilder builder = Program.process(args);
    if (folder != null) {
      builder.directory(folder.toFile());
    }
    Process process = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    try {
      process.getOutputStream().close();
      if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS)) {
        throw new AssertionError("did not end within " + LONGEST_S + " s: " + args);
      }
      return process.exitValue();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("interrupted while waiting for " + args, e);
    } finally {
      process.destroyForcibly();
    }
  }
}
