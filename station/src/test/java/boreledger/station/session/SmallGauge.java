package boreledger.station.session;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;

/**
 * A gauge that sends one line per press, such as {@code +0.012} and a line feed.
 *
 * @param fileName the profile's file name
 * @param text the profile
 */
public record SmallGauge(String fileName, String text) {
  private static final String DEVIATION =
      """
      format = "boreledger-gauge/1"
      name = "Pressed line"
      reads = "deviation"
      unit = "mm"
      resolution_mm = 0.001
      max_error_mm = 0.002
      [frame]
      kind = "line"
      ends_with = "\\n"
      max_bytes = 32
      [decode]
      pattern = '^(?<value>[+-]?\\d+\\.\\d+)$'
      [pick]
      rule = "press"
      """;

  /** It reads the deviation from its setting. */
  public static SmallGauge deviation() {
    return new SmallGauge("pressed.gauge.toml", DEVIATION);
  }

  /** It reads sizes, of bores or of gaps. */
  public static SmallGauge size() {
    String text =
        DEVIATION.replace("\"deviation\"", "\"size\"").replace("Pressed line", "Pressed size");
    return new SmallGauge("size.gauge.toml", text);
  }

  /** The same gauge with a piece of its profile exchanged. */
  public SmallGauge with(String piece, String instead) {
    if (!text.contains(piece)) {
      throw new AssertionError("the profile does not say " + piece);
    }
    return new SmallGauge(fileName, text.replace(piece, instead));
  }

  /** The profile as the program reads it. */
  public GaugeProfile profile() {
    try {
      return GaugeProfiles.parse(fileName, text);
    } catch (FileProblem e) {
      throw new AssertionError(e);
    }
  }
}
