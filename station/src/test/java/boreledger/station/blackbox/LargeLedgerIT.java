package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program in a small heap on a large ledger.
 *
 * <p>{@code -Dboreledger.readings=1000000} makes it large indeed.
 */
@EnabledOnOs(value = OS.LINUX, disabledReason = "reads the process's memory from /proc")
class LargeLedgerIT {
  private static final long READINGS = Long.getLong("boreledger.readings", 20_000);
  private static final String HEAP = System.getProperty("boreledger.heap", "-Xmx512m");
  private static final long LONGEST_S = 1800;

  @TempDir Path folder;

  @Test
  void auditExportAndResultsOfALargeLedgerKeepToASmallHeap() throws Exception {
    ManyReadings many = new ManyReadings(folder);
    long readings = many.write(READINGS);
    System.out.printf("%d readings, %d bytes%n", readings, Files.size(many.ledger()));
    Path csv = folder.resolve("readings.csv");

    run("audit", "--json", "--ledger", many.ledger().toString());
    String audit = Files.readString(folder.resolve("audit.out"));
    assertEquals(readings, Json.only(audit, "audit").path("recomputed").asLong());
    assertTrue(Json.only(audit, "audit").path("intact").asBoolean(), audit);

    run("export", "--ledger", many.ledger().toString(), "--out", csv.toString());
    try (Stream<String> lines = Files.lines(csv)) {
      assertEquals(readings, lines.skip(1).filter(line -> line.contains("Small engine")).count());
    }

    run("results", "--json", "--ledger", many.ledger().toString());
    String results = Files.readString(folder.resolve("results.out"));
    assertEquals(16, Json.only(results, "results").path("cylinders").size());
  }

  private void run(String... args) throws IOException, InterruptedException {
    ProcessBuilder builder = Program.process(List.of(args));
    builder.environment().put("BORELEDGER_JAVA_OPTIONS", HEAP);
    Path err = folder.resolve(args[0] + ".err");
    long startNs = System.nanoTime();
    Process process =
        builder
            .redirectOutput(folder.resolve(args[0] + ".out").toFile())
            .redirectError(err.toFile())
            .start();
    String peak = "";
    while (!process.waitFor(50, TimeUnit.MILLISECONDS)) {
      peak = peak(process.pid(), peak);
      double s = (System.nanoTime() - startNs) / 1e9;
      assertTrue(s < LONGEST_S, () -> "still running after " + s + " s: " + List.of(args));
    }
    System.out.printf(
        "%s: %.1f s with %s, peak of resident memory %s%n",
        args[0], (System.nanoTime() - startNs) / 1e9, HEAP, peak);
    assertTrue(process.exitValue() < 2, () -> read(err));
  }

  /**
   * The most memory that a process has had so far; what was known before when it has just ended.
   */
  private static String peak(long pid, String before) {
    try (Stream<String> status = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      return status
          .filter(line -> line.startsWith("VmHWM:"))
          .map(line -> line.substring("VmHWM:".length()).strip())
          .findFirst()
          .orElse(before);
    } catch (IOException | UncheckedIOException e) {
      return before;
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
