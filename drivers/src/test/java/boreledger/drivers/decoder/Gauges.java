package boreledger.drivers.decoder;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.FlagSpec;
import boreledger.drivers.profile.FrameSpec;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.profile.PickSpec;
import boreledger.drivers.profile.ProfileSource;
import boreledger.drivers.profile.Reads;
import java.util.List;
import java.util.Set;

/** Gauge profiles cut down to what a decoder test is about. */
final class Gauges {
  private Gauges() {}

  /** A gauge whose buttons sends lines that are decoded so. */
  static GaugeProfile of(DecodeSpec decode, LengthUnit unit) {
    return new GaugeProfile(
        new ProfileSource("g", "", ""),
        "g",
        Reads.SIZE,
        unit,
        0.001,
        0.002,
        Set.of(),
        null,
        LineSettings.DEFAULT,
        new FrameSpec.Delimited(Bytes.ofHex("0d0a"), 64),
        decode,
        FlagSpec.NONE,
        List.of(),
        null,
        new PickSpec.Press(5));
  }

  /** A gauge with the tables that are given, {@code [frame]} to {@code [pick]}. */
  static GaugeProfile of(String tables) throws FileProblem {
    String text =
        """
        format = "boreledger-gauge/1"
        name = "g"
        reads = "size"
        unit = "mm"
        resolution_mm = 0.001
        max_error_mm = 0.002
        """;
    String pick = tables.contains("[pick]") ? "" : "[pick]\nrule = 'press'\n";
    return GaugeProfiles.parse("g", text + tables + "\n" + pick);
  }

  /** What becomes of a whole frame, its marks among the payload. */
  static Decoded decode(GaugeProfile profile, String hex) {
    Bytes raw = Bytes.ofHex(hex.replace(" ", ""));
    return Decoders.of(profile).decode(new FrameEvent.Frame(1.5, raw, raw));
  }
}
