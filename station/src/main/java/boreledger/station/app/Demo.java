package boreledger.station.app;

import boreledger.drivers.capture.Pace;
import boreledger.drivers.file.FileProblem;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.report.Paper;
import boreledger.station.results.JobResults;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Supplier;

/**
 * The invented engine of the sample captures, gauged into a new ledger, with its build sheet beside
 * it.
 */
public final class Demo {
  /** The system property that names the program's folder. */
  public static final String HOME = "boreledger.home";

  private static final String SHEET_ENDING = ".pdf";
  private static final String JOB = "pumphouse-three.job.toml";
  private static final List<String> CAPTURES =
      List.of("bore-rocked.capture.jsonl", "gap-top.capture.jsonl", "gap-second.capture.jsonl");

  private final Replay replay;
  private final Path ledgerFile;

  private Demo(Replay replay, Path ledgerFile) {
    this.replay = replay;
    this.ledgerFile = ledgerFile;
  }

  /**
   * Reads the sample captures.
   *
   * @param ledgerFile where the new ledger goes; null for a new temporary folder
   * @throws UsageProblem if the ledger or its sheet is there already, or the samples are not
   */
  public static Demo prepare(Path ledgerFile) throws FileProblem, UsageProblem {
    if (ledgerFile != null) {
      requireNew(ledgerFile, "ledger");
      requireNew(sheet(ledgerFile), "build sheet beside it");
    }
    Path samples = samples();
    List<Path> captures = CAPTURES.stream().map(samples::resolve).toList();
    Replay replay = Replay.prepare(samples.resolve(JOB), captures, null);
    return new Demo(replay, ledgerFile == null ? temporary() : ledgerFile);
  }

  /** Where the ledger goes. */
  public Path ledgerFile() {
    return ledgerFile;
  }

  /** Where the build sheet goes. */
  public Path sheetFile() {
    return sheet(ledgerFile);
  }

  /**
   * Plays it, then writes the build sheet.
   *
   * @param pace a pace for each capture
   * @throws UsageProblem if the sheet cannot be written
   */
  public JobResults play(Supplier<Pace> pace, Play play) throws LedgerFault, UsageProblem {
    JobResults results;
    try (Ledger ledger = Ledger.openOrCreate(ledgerFile)) {
      results = replay.into(ledger, pace, play);
    }
    ReportFile.write(
        new ReportRequest(ledgerFile, null, sheetFile(), false, Paper.A4, null, null),
        Clock.systemUTC());
    return results;
  }

  private static void requireNew(Path file, String what) throws UsageProblem {
    if (Files.exists(file)) {
      throw new UsageProblem(
          file + ": is there already, and the demo makes a new " + what + "; name another ledger");
    }
  }

  /** The ledger's name with another ending, such as {@code demo.pdf} beside {@code demo.db}. */
  private static Path sheet(Path ledger) {
    String name = ledger.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String bare = dot > 0 && !name.endsWith(SHEET_ENDING) ? name.substring(0, dot) : name;
    return ledger.resolveSibling(bare + SHEET_ENDING);
  }

  private static Path samples() throws UsageProblem {
    Path samples = Folders.samples();
    if (!Files.exists(samples.resolve(JOB))) {
      throw new UsageProblem(
          samples + ": the sample captures are not here; start the program by bin/boreledger");
    }
    return samples;
  }

  private static Path temporary() {
    try {
      return Files.createTempDirectory("boreledger-demo").resolve("pumphouse-three.db");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
