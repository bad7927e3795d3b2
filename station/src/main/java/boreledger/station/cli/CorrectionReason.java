package boreledger.station.cli;

import picocli.CommandLine.Option;

/** Why something is corrected, and who says so. */
final class CorrectionReason {
  @Option(names = "--why", required = true, paramLabel = "WORDS", description = "The reason.")
  private String why;

  @Option(names = "--who", required = true, paramLabel = "WHO", description = "Who says so.")
  private String who;

  String why() {
    return why;
  }

  String who() {
    return who;
  }
}
