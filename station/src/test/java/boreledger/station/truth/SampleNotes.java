package boreledger.station.truth;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The words beside the sample captures: what each is, how it was made, what must come out. */
final class SampleNotes {
  static final String JOB_COMMENT =
      """
      # Pumphouse three: an invented engine of three cylinders that drives a water pump and is
      # about to get a small blower. Every figure here is invented; for a real engine take the
      # engine and ring makers' data.
      """;

  private static final Map<String, String> ABOUT =
      Map.ofEntries(
          Map.entry("bore-press", "all bores gauged with one press of the button per position"),
          Map.entry(
              "bore-fixed",
              "the same bores with a gauge that sends ten bytes with a decimal comma"),
          Map.entry(
              "bore-inch",
              "the same bores; the gauge's unit key goes from inch to mm after ten presses"),
          Map.entry("bore-rocked", "the same bores with a streaming gauge rocked by hand"),
          Map.entry(
              "bore-damaged", "the same bores over a bad line: every position is still readable"),
          Map.entry(
              "bore-integer",
              "the same bores with a gauge that sends whole numbers, and whose unit bit goes from"
                  + " inch to mm after ten presses"),
          Map.entry("bore-digits", "the same bores with a gauge that sends packed digits"),
          Map.entry("bore-silence", "the same bores with a gauge whose messages end in silence"),
          Map.entry("bore-modbus", "the same bores with a gauge that answers as a Modbus slave"),
          Map.entry("gap-top", "end gaps of the top rings at three depths in each bore"),
          Map.entry("gap-second", "end gaps of the second rings at three depths in each bore"));

  private SampleNotes() {}

  static String headerComment(String name, long seed) {
    return "Pumphouse three (invented): %s. Made by the model in the station's tests, seed %d."
        .formatted(ABOUT.get(name), seed);
  }

  static String bore(String name, long seed, BoreTruth truth) {
    return title(name)
        + made(seed, "The digits as sent decide: diameters follow from them to a nanometre.")
        + cylinders(truth);
  }

  static String rocked(long seed, int glitches, BoreTruth truth) {
    return title("bore-rocked")
        + made(
            seed,
            """
            The gauge streams 25 values a second. In free air it shows about +2.600; at each place
            it is entered within three values and rocked for 5 to 7 seconds by 4 to 8 degrees either
            way, one swing to and fro in 1.2 to 2 seconds. Anvil radius 1.5 mm, noise 0.0007 mm,
            digit step 0.001 mm, %d single values spoilt (up to 0.3 mm high or 0.15 mm low). The
            setting ring is rocked like a bore, first and last. The figures below are the model's
            true bores.
            """
                .formatted(glitches))
        + cylinders(truth);
  }

  static String damaged(long seed, DamagedLine line, BoreTruth truth) {
    return title("bore-damaged")
        + made(seed, "One frame comes in three pieces and one chunk brings two frames.\n")
        + "\nRefused while cutting and decoding:\n\n"
        + list(line.rejected())
        + "\nDecoded, but refused as a reading, using up no position:\n\n"
        + list(line.tooFar())
        + cylinders(truth);
  }

  static String gap(long seed, Engine engine, GapSession session, BoreTruth pressed) {
    StringBuilder text = new StringBuilder(title("gap-" + session.ring().name()));
    text.append(made(seed, "Gaps are read at the bench's 21.3 °C, in steps of 0.005 mm.\n"));
    text.append("\nReplayed together with bore-press:\n\n");
    text.append("| cylinder | measured mm | expected change mm | tightest cold mm | hot mm |\n");
    text.append("| --- | --- | --- | --- | --- |\n");
    for (int cylinder = 1; cylinder <= engine.bores().size(); cylinder++) {
      GapTruth truth = new GapTruth(engine, pressed, session.ring(), cylinder);
      text.append(gapRow(truth, session.readings(cylinder)));
    }
    return text.append("\nThe tightest gap is at 20 °C over the ring's whole travel; compare it")
        .append(" with the job's gap_min_mm\nof ")
        .append(session.ring().gapMinMm())
        .append(" mm. The hot one is a free-expansion estimate.\n")
        .toString();
  }

  private static String gapRow(GapTruth truth, List<GapReading> readings) {
    double lengthMm = truth.meanLengthMm(readings);
    GapTruth.Tight cold = truth.tightestMm(lengthMm);
    GapTruth.Tight hot = truth.tightestHotMm(lengthMm);
    return "| %d | %s | %s | %s at %s | %s at %s |%n"
        .formatted(
            truth.cylinder(),
            readings.stream().map(r -> r.mm().toPlainString()).collect(Collectors.joining(", ")),
            readings.stream()
                .map(r -> SampleFolder.shown(truth.expectedChangeMm(r.depthMm())))
                .collect(Collectors.joining(", ")),
            SampleFolder.shown(cold.gapMm()),
            cold.depthMm(),
            SampleFolder.shown(hot.gapMm()),
            hot.depthMm())
        .replace("\r\n", "\n");
  }

  private static String title(String name) {
    return "# %s%n%nPumphouse three, an invented engine: %s.%n"
        .formatted(name, ABOUT.get(name))
        .replace("\r\n", "\n");
  }

  private static String made(long seed, String more) {
    return """

        Made by the model in the station's tests (`boreledger.station.truth`), seed %d. Setting ring
        96.002 mm at 20.4 °C with 11.5e-6/K, block at 21.3 °C with 10.8e-6/K; the gauge's zero walks
        evenly by about 0.002 mm from the opening to the closing check.
        """
            .formatted(seed)
        + more.stripTrailing()
        + "\n";
  }

  private static String list(List<DamagedLine.Refusal> refusals) {
    return refusals.stream()
        .map(refusal -> "- at %s s: %s\n".formatted(refusal.tS(), refusal.why()))
        .collect(Collectors.joining());
  }

  private static String cylinders(BoreTruth truth) {
    StringBuilder text = new StringBuilder("\nWhat must come out, in millimetres at 20 °C:\n\n");
    text.append(
        "| cylinder | taper thrust | taper pin | largest out-of-round | gap change | so |\n");
    text.append("| --- | --- | --- | --- | --- | --- |\n");
    for (int cylinder = 1; cylinder <= 3; cylinder++) {
      text.append(row(truth, cylinder));
    }
    return text.append("\nThe gap change is that of any ring from 12 mm down to 108 mm.\n")
        .toString();
  }

  private static String row(BoreTruth truth, int cylinder) {
    double outOfRound =
        truth.perimetersMm(cylinder).keySet().stream()
            .mapToDouble(depthMm -> truth.outOfRoundMm(cylinder, depthMm).doubleValue())
            .max()
            .orElseThrow();
    double change = truth.perimeterMm(cylinder, 108) - truth.perimeterMm(cylinder, 12);
    List<String> verdicts =
        List.of(
            "straight and round",
            "within its taper limit, yet a gap right at the top is too small at the bottom",
            "out of round beyond its limit");
    return "| %d | %s | %s | %s | %s | %s |\n"
        .formatted(
            cylinder,
            SampleFolder.shown(truth.taperMm(cylinder, Axis.THRUST).doubleValue()),
            SampleFolder.shown(truth.taperMm(cylinder, Axis.PIN).doubleValue()),
            SampleFolder.shown(outOfRound),
            SampleFolder.shown(change),
            verdicts.get(cylinder - 1));
  }
}
