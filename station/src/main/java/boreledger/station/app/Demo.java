package boreledger.station.app;

import boreledger.drivers.capture.Pace;
import boreledger.drivers.file.FileProblem;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;

/** The invented engine of the sample captures, gauged into a new ledger. */
public final class Demo {
  /** The system property that names the program's folder. */
  public static final String HOME = "boreledger.home";

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
   * @throws UsageProblem if the ledger is there already, or the samples are not
   */
  public static Demo prepare(Path ledgerFile) throws FileProblem, UsageProblem {
    if (ledgerFile != null && Files.exists(ledgerFile)) {
      throw new UsageProblem(
          ledgerFile + ": is there already, and the demo makes a new ledger; name another file");
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

  /**
   * Plays it.
   *
   * @param pace a pace for each capture
   */
  public JobResults play(Supplier<Pace> pace, Play play) throws LedgerFault {
    try (Ledger ledger = Ledger.openOrCreate(ledgerFile)) {
      return replay.into(ledger, pace, play);
    }
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
