package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Makes every file of the folder sample-captures except its README. */
public final class SampleFolder {
  static final String JOB = "pumphouse-three.job.toml";
  private static final String EXACT =
      "0.000001 mm (diameters from the readings as sent; true_diameter_mm is the model's bore, from"
          + " which noise and digit step keep the gauge by up to 0.003 mm)";
  private static final String ROCKED =
      "0.0015 mm for diameters, twice that for differences, 0.007 mm for perimeters and gap changes"
          + " (noise of 0.0007 mm, digit step 0.001 mm)";
  private static final String GAPS =
      "0.000001 mm for measured_mm, 0.000002 mm for expected_change_mm, 0.0005 mm for all that"
          + " averages over a ring's readings (weights may differ by a few per cent)";
  private static final String OVAL_3 = "cylinder 3 is out of round beyond its limit";

  private final Engine engine = PumphouseThree.engine();
  private final Map<String, String> files = new TreeMap<>();

  private SampleFolder() {}

  /** Every file's name and text. */
  public static Map<String, String> files() {
    SampleFolder folder = new SampleFolder();
    folder.jobAndProfiles();
    BoreTruth pressed = folder.press("bore-press", "signed-decimal", 3101, Wire.signedMm(3));
    folder.press("bore-fixed", "fixed-comma", 3102, Wire.fixedComma());
    folder.switched("bore-inch", "inch-or-mm", 3103, Wire.signedInch(), Wire.signedMmWithUnit(3));
    folder.rocked();
    folder.inBytes();
    folder.damaged();
    folder.gap("gap-top", 3106, folder.engine.ring("top"), PumphouseThree.TOP_GAPS_MM, pressed);
    folder.gap(
        "gap-second", 3107, folder.engine.ring("second"), PumphouseThree.SECOND_GAPS_MM, pressed);
    return folder.files;
  }

  private void jobAndProfiles() {
    files.put(JOB, JobText.of(engine, SampleNotes.JOB_COMMENT));
    files.put("signed-decimal.gauge.toml", ProfileText.signedDecimal());
    files.put("signed-decimal-rocked.gauge.toml", ProfileText.signedDecimalRocked());
    files.put("gap-leaf.gauge.toml", ProfileText.gapLeaf());
    files.put("fixed-comma.gauge.toml", ProfileText.fixedComma());
    files.put("inch-or-mm.gauge.toml", ProfileText.inchOrMm());
  }

  private void inBytes() {
    files.putAll(BinaryProfileText.files());
    switched(
        "bore-integer",
        "integer-unit-bit",
        3108,
        BinaryWire.integerWithUnitBit(true),
        BinaryWire.integerWithUnitBit(false));
    press("bore-digits", "packed-digits", 3109, BinaryWire.packedDigits());
    press("bore-silence", "silent-count", 3110, BinaryWire.silent());
    press("bore-modbus", "modbus-registers", 3111, BinaryWire.modbus());
  }

  private BoreTruth press(String name, String gauge, long seed, Wire wire) {
    PressSession session =
        PressSession.gauge(engine, PumphouseThree.drift(160), 0.0004, wire, new Noise(seed));
    return boreFiles(name, gauge, seed, session.presses());
  }

  /** A gauge whose unit key is pressed after ten presses of its button. */
  private void switched(String name, String gauge, long seed, Wire before, Wire after) {
    Drift drift = PumphouseThree.drift(160);
    List<PressSession.Press> first =
        PressSession.gauge(engine, drift, 0.0004, before, new Noise(seed)).presses();
    List<PressSession.Press> then =
        PressSession.gauge(engine, drift, 0.0004, after, new Noise(seed)).presses();
    List<PressSession.Press> switched = new ArrayList<>(first.subList(0, 10));
    switched.addAll(then.subList(10, then.size()));
    boreFiles(name, gauge, seed, switched);
  }

  private BoreTruth boreFiles(
      String name, String gauge, long seed, List<PressSession.Press> presses) {
    CaptureText capture = new CaptureText(boreHeader(name, gauge, seed));
    presses.forEach(press -> capture.chunk(press.reading().tS(), press.frame()));
    List<BoreReading> readings = presses.stream().map(PressSession.Press::reading).toList();
    BoreTruth truth = BoreTruth.ofReadings(engine.bench(), readings);
    ExpectedJson expected =
        new ExpectedJson(capture(name), EXACT)
            .replay(List.of(capture(name)), 1, OVAL_3)
            .gaugeCheck(gauge + ".gauge.toml", readings.size(), List.of(), 0)
            .refusedReadings(List.of())
            .readings(readings)
            .bores(engine, truth);
    put(name, capture, expected, SampleNotes.bore(name, seed, truth));
    return truth;
  }

  private void rocked() {
    String name = "bore-rocked";
    long seed = 3104;
    RockedSession session =
        RockedSession.gauge(engine, PumphouseThree.drift(150), Wire.signedMm(3), new Noise(seed));
    CaptureText capture = new CaptureText(boreHeader(name, "signed-decimal-rocked", seed));
    session.stream().forEach(value -> capture.chunk(value.tS(), value.frame()));
    BoreTruth truth = BoreTruth.ofEngine(engine);
    ExpectedJson expected =
        new ExpectedJson(capture(name), ROCKED)
            .replay(List.of(capture(name)), 1, OVAL_3)
            .gaugeCheck("signed-decimal-rocked.gauge.toml", session.stream().size(), List.of(), 0)
            .refusedReadings(List.of())
            .bores(engine, truth);
    put(name, capture, expected, SampleNotes.rocked(seed, session.glitches(), truth));
  }

  private void damaged() {
    String name = "bore-damaged";
    long seed = 3105;
    CaptureText capture = new CaptureText(boreHeader(name, "signed-decimal", seed));
    PressSession session =
        PressSession.gauge(
            engine, PumphouseThree.drift(160), 0.0004, Wire.signedMm(3), new Noise(seed));
    DamagedLine line = new DamagedLine(capture, session.presses());
    BoreTruth truth = BoreTruth.ofReadings(engine.bench(), line.readings());
    ExpectedJson expected =
        new ExpectedJson(capture(name), EXACT)
            .replay(List.of(capture(name)), 1, OVAL_3 + "; frames and a reading were refused")
            .gaugeCheck("signed-decimal.gauge.toml", line.readings().size() + 1, line.rejected(), 1)
            .refusedReadings(line.tooFar())
            .readings(line.readings())
            .bores(engine, truth);
    put(name, capture, expected, SampleNotes.damaged(seed, line, truth));
  }

  private void gap(
      String name, long seed, RingKind ring, List<Double> firstGapsMm, BoreTruth pressed) {
    GapSession session =
        GapSession.gauge(engine, ring, firstGapsMm, 0.0015, Wire.leafMm(), new Noise(seed));
    CaptureText capture = new CaptureText(gapHeader(ring, seed));
    session.presses().forEach(press -> capture.chunk(press.reading().tS(), press.frame()));
    ExpectedJson expected =
        new ExpectedJson(capture(name), GAPS)
            .replay(List.of(capture("bore-press"), capture(name)), 1, OVAL_3)
            .gaugeCheck("gap-leaf.gauge.toml", session.presses().size(), List.of(), 0)
            .gaps(engine, pressed, session);
    put(name, capture, expected, SampleNotes.gap(seed, engine, session, pressed));
  }

  private Map<String, Object> boreHeader(String name, String gauge, long seed) {
    Map<String, Object> header = new LinkedHashMap<>();
    header.put("comment", SampleNotes.headerComment(name, seed));
    header.put("gauge", gauge + ".gauge.toml");
    header.put("measure", "bore");
    long minutes = (seed - 3101) * 10;
    header.put("started", "2031-05-06T%02d:%02d:00Z".formatted(8 + minutes / 60, minutes % 60));
    header.put("setting_temp_c", engine.bench().settingTempC());
    header.put("block_temp_c", engine.bench().blockTempC());
    return header;
  }

  private Map<String, Object> gapHeader(RingKind ring, long seed) {
    Map<String, Object> header = new LinkedHashMap<>();
    header.put("comment", SampleNotes.headerComment("gap-" + ring.name(), seed));
    header.put("gauge", "gap-leaf.gauge.toml");
    header.put("measure", "gap");
    header.put("ring", ring.name());
    header.put("started", "2031-05-06T09:%02d:00Z".formatted((seed - 3106) * 20));
    header.put("block_temp_c", engine.bench().blockTempC());
    return header;
  }

  private void put(String name, CaptureText capture, ExpectedJson expected, String notes) {
    files.put(capture(name), capture.toString());
    files.put(name + ".expected.json", expected.toString());
    files.put(name + ".notes.md", notes);
  }

  private static String capture(String name) {
    return name + ".capture.jsonl";
  }

  /** Digits as notes show them, in micrometres of a millimetre. */
  static String shown(double mm) {
    return BigDecimal.valueOf(mm).setScale(4, java.math.RoundingMode.HALF_EVEN).toPlainString();
  }
}
