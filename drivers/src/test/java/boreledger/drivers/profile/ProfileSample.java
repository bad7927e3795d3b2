package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;

/** A complete gauge profile to change one thing in. */
final class ProfileSample {
  static final String TEXT =
      """
      format = "boreledger-gauge/1"
      name = "Signed decimal line"
      reads = "deviation"
      unit = "mm"
      resolution_mm = 0.001
      max_error_mm = 0.002

      [line]
      baud = 4800
      data_bits = 7
      parity = "even"
      stop_bits = 2
      dtr = true
      rts = false

      [frame]
      kind = "line"
      ends_with = "\\r\\n"
      max_bytes = 64

      [decode]
      pattern = '^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$'

      [pick]
      rule = "rock"
      """;

  private ProfileSample() {}

  /** The text with a line replaced; the old line must be there. */
  static String with(String oldLine, String newLine) {
    if (!TEXT.contains(oldLine + "\n")) {
      throw new IllegalArgumentException("no line " + oldLine);
    }
    return TEXT.replace(oldLine + "\n", newLine + "\n");
  }

  static GaugeProfile parse(String text) throws FileProblem {
    return GaugeProfiles.parse("g", text);
  }
}
