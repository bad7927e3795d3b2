package boreledger.station.bench;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.LengthUnit;
import java.util.List;

/** Invented gauges and what they say. */
public final class Gauges {
  private Gauges() {}

  /** A bore gauge that is rocked and shows deviations. */
  public static GaugeProfile rocked() {
    return gauge("Signed decimal line, rocked", "deviation", "rock");
  }

  /** A rocked bore gauge with a long name. */
  public static GaugeProfile wordy() {
    return gauge(
        "Bore gauge 50 to 150 mm with the long extension, signed decimal line",
        "deviation",
        "rock");
  }

  /** A gauge that sends a size on the press of a key. */
  public static GaugeProfile pressed() {
    return gauge("Gap leaf gauge", "size", "press");
  }

  /** A gauge that sends sizes all the time and is held still. */
  public static GaugeProfile settled() {
    return gauge("Steady size line", "size", "settle");
  }

  /** One sample. */
  public static Sample sample(double tS, double valueMm) {
    return new Sample(tS, Bytes.ofHex("2b31"), valueMm, LengthUnit.MM, false);
  }

  /** One picked value. */
  public static PickEvent.Picked picked(double tS, double valueMm, String... cautions) {
    return new PickEvent.Picked(tS, valueMm, null, List.of(sample(tS, valueMm)), List.of(cautions));
  }

  private static GaugeProfile gauge(String name, String reads, String rule) {
    String text =
        """
        format = "boreledger-gauge/1"
        name = "%s"
        reads = "%s"
        unit = "mm"
        resolution_mm = 0.001
        max_error_mm = 0.002
        [frame]
        kind = "line"
        ends_with = "\\r\\n"
        max_bytes = 64
        [decode]
        pattern = '^(?<value>[+-]?\\d+\\.\\d+)$'
        [pick]
        rule = "%s"
        """
            .formatted(name, reads, rule);
    try {
      return GaugeProfiles.parse("a.gauge.toml", text);
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }
}
