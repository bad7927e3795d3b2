package boreledger.station.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Where the program's own files and a person's ledgers stand. */
public final class Folders {
  private static final String JOB_ENDING = ".job.toml";

  private Folders() {}

  /** The ledger that goes with a job unless another is named: beside the job file. */
  public static Path ledgerBeside(Path job) {
    String name = job.getFileName().toString();
    String stem =
        name.endsWith(JOB_ENDING) ? name.substring(0, name.length() - JOB_ENDING.length()) : name;
    return job.resolveSibling(stem + ".ledger.db");
  }

  /** The job of the invented engine that comes with the program. */
  public static Path sampleJob() {
    return samples().resolve("pumphouse-three.job.toml");
  }

  /**
   * The ledger of those who practise, in the folder that the XDG Base Directory Specification gives
   * to a person's data.
   */
  public static Path practiceLedger() {
    String data = System.getenv("XDG_DATA_HOME");
    Path folder =
        data == null || data.isBlank()
            ? Path.of(System.getProperty("user.home"), ".local", "share")
            : Path.of(data);
    return folder.resolve("boreledger").resolve("practice.ledger.db");
  }

  /**
   * Makes the folder of a ledger where there is none.
   *
   * @throws UsageProblem if it cannot be made
   */
  public static void makeFor(Path ledger) throws UsageProblem {
    Path folder = ledger.toAbsolutePath().getParent();
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UsageProblem(folder + ": this folder for the ledger cannot be made, " + e);
    }
  }

  /**
   * The folder where a person's own jobs are, for a new one.
   *
   * @param recent jobs used of late, the last one first; those that came with the program do not
   *     count, as its folder may be replaced by a newer one
   * @return the home folder when there is none
   */
  public static Path ofJobs(List<Path> recent) {
    Path samples = samples().toAbsolutePath().normalize();
    return recent.stream()
        .map(file -> file.toAbsolutePath().normalize().getParent())
        .filter(folder -> !folder.equals(samples) && Files.isDirectory(folder))
        .findFirst()
        .orElse(Path.of(System.getProperty("user.home")));
  }

  static Path samples() {
    String home = System.getProperty(Demo.HOME);
    return Path.of(home == null ? "." : home).resolve("sample-captures");
  }
}
