package boreledger.station.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** A gauge profile and what the gauge sent. */
final class RecordedGauge {
  @Option(
      names = "--gauge",
      required = true,
      paramLabel = "FILE",
      description = "The gauge profile: a file, or the name of a built-in one.")
  private Path gauge;

  @Option(
      names = "--capture",
      required = true,
      paramLabel = "FILE",
      description = "What the gauge sent.")
  private Path capture;

  Path gauge() {
    return gauge;
  }

  Path capture() {
    return capture;
  }
}
