package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.EnumSet;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The text of a gauge profile as data. */
final class ProfileText {
  private static final Map<String, String> FORMATS =
      Map.of("boreledger-gauge/1", "boreledger-gauge/1");
  private static final Map<String, Reads> READS =
      new TreeMap<>(Map.of("deviation", Reads.DEVIATION, "size", Reads.SIZE));
  private static final Map<String, LengthUnit> UNITS =
      new TreeMap<>(Map.of("mm", LengthUnit.MM, "in", LengthUnit.IN));
  private static final Map<String, MaxErrorPart> PARTS =
      new TreeMap<>(
          Map.of(
              "resolution", MaxErrorPart.RESOLUTION, "repeatability", MaxErrorPart.REPEATABILITY));

  private ProfileText() {}

  static GaugeProfile parse(String shownAs, String fileName, String text) throws FileProblem {
    Table file = StrictToml.parse(shownAs, text);
    file.required("format").oneOf(FORMATS);
    double resolutionMm = file.required("resolution_mm").positive();
    Optional<Value> repeatability = file.optional("repeatability_mm");
    LineSettings line = LineTable.read(file);
    FrameSpec frame = FrameTable.read(file.table("frame"));
    Table decodeTable = file.table("decode");
    DecodeSpec decode = DecodeTable.read(decodeTable, frame);
    GaugeProfile profile =
        new GaugeProfile(
            new ProfileSource(fileName, text, sha256(text)),
            file.required("name").string(),
            file.required("reads").oneOf(READS),
            file.required("unit").oneOf(UNITS),
            resolutionMm,
            file.required("max_error_mm").positive(),
            maxErrorIncludes(file),
            repeatability.isEmpty() ? null : Double.valueOf(repeatability.get().positive()),
            line,
            frame,
            decode,
            FlagsTable.read(file, decode.isBinary() ? decodeTable : null, frame),
            CheckTables.read(file, frame),
            AskTable.read(file, decode, line).orElse(null),
            PickTable.read(file.table("pick"), resolutionMm));
    file.done();
    return profile;
  }

  private static Set<MaxErrorPart> maxErrorIncludes(Table file) throws FileProblem {
    Set<MaxErrorPart> parts = EnumSet.noneOf(MaxErrorPart.class);
    Optional<Value> listed = file.optional("max_error_includes");
    if (listed.isPresent()) {
      for (Value value : listed.get().list()) {
        parts.add(value.oneOf(PARTS));
      }
    }
    return parts;
  }

  private static String sha256(String text) {
    try {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
