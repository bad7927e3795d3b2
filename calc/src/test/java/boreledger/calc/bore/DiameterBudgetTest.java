package boreledger.calc.bore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DiameterBudgetTest {
  private static final double SQRT3 = 1.7320508075688772;
  private static final double SQRT12 = 3.4641016151377544;

  private static Map<String, Double> lines(Budget budget) {
    Map<String, Double> lines = new LinkedHashMap<>();
    budget.components().forEach(each -> lines.put(each.name(), each.standardUncertaintyMm()));
    return lines;
  }

  private static Diameter at(BoreGauging session, double depthMm, double valueMm) {
    return session.diameter(new BoreReading(depthMm, "thrust", 500, valueMm, null));
  }

  private static BoreGauging drifting(double closingMm) {
    return Gaugings.with(
        ZeroLine.of(new ZeroCheck(0, 0, 20.4), new ZeroCheck(1000, closingMm, 20.4)),
        GaugeAccuracy.of(0.001, 0.002));
  }

  @Test
  void sizeHasEveryLineOfTheFormula() {
    Diameter diameter = at(drifting(0.0012), 12, 0.02);
    double d = diameter.diameterMm();
    Map<String, Double> expected = new LinkedHashMap<>();
    expected.put("setting calibration", 0.0005);
    expected.put("resolution of the zero", 0.001 / SQRT12);
    expected.put("bore expansion coefficient", d * 0.5e-6 * 1.3);
    expected.put("block temperature", d * 11.4e-6 * 0.5);
    expected.put("gauge growth", d * 11.5e-6 * 0.5);
    expected.put("setting temperature", 96.002 * 11.5e-6 * 0.5);
    expected.put("setting expansion coefficient", 96.002 * 0.5e-6 * 0.4);
    // In the middle between two checks the zero is their mean.
    expected.put("repeatability of the zero", 0.0008 / Math.sqrt(2));
    expected.put("resolution of readings", 0.001 / SQRT12);
    expected.put("repeatability", 0.0008);
    expected.put("gauge permissible error", 0.002 / SQRT3);
    expected.put("zero between checks", 0.0006 / SQRT3);
    Map<String, Double> found = lines(diameter.budget());
    assertEquals(List.copyOf(expected.keySet()), List.copyOf(found.keySet()));
    expected.forEach((name, u) -> assertEquals(u, found.get(name), 1e-12, name));
  }

  @Test
  void differenceLeavesOutWhatBothReadingsShare() {
    BoreGauging session = drifting(0.0012);
    Map<String, Double> found = lines(at(session, 12, 0.02).minus(at(session, 60, 0.01)).budget());
    Map<String, Double> expected = new LinkedHashMap<>();
    expected.put("resolution of readings", Math.sqrt(2) * 0.001 / SQRT12);
    expected.put("repeatability", Math.sqrt(2) * 0.0008);
    expected.put("gauge permissible error", 0.002 / SQRT3);
    expected.put("zero between checks", 0.0006 / SQRT3);
    assertEquals(List.copyOf(expected.keySet()), List.copyOf(found.keySet()));
    expected.forEach((name, u) -> assertEquals(u, found.get(name), 1e-12, name));
  }

  /**
   * JCGM 100:2008, 5.2.2, example (figures from memory): ten resistors calibrated with one standard
   * of 100 milliohm uncertainty have 1 ohm in series, and not the 0.32 ohm of ten that share
   * nothing.
   */
  @Test
  void sumOfTenSizesHasTheirSettingsErrorTenTimes() {
    BoreGauging session = drifting(0.0012);
    WeightedDiameters sum = WeightedDiameters.of(at(session, 1, 0.02));
    for (int k = 2; k <= 10; k++) {
      sum = sum.plus(WeightedDiameters.of(at(session, k, 0.02)));
    }
    Map<String, Double> found = lines(sum.budget());
    assertEquals(10 * 0.0005, found.get("setting calibration"), 1e-12);
    // What each reading has for itself adds in squares.
    assertEquals(Math.sqrt(10) * 0.0008, found.get("repeatability"), 1e-12);
  }

  @Test
  void withoutClosingCheckThePermissibleErrorCountsTwice() {
    BoreGauging open =
        Gaugings.with(ZeroLine.of(new ZeroCheck(0, 0, 20.4)), GaugeAccuracy.of(0.001, 0.002));
    Map<String, Double> size = lines(at(open, 12, 0.02).budget());
    assertEquals(0.002 / SQRT3, size.get("gauge permissible error"), 1e-12);
    assertEquals(0.002 / SQRT3, size.get("zero not checked again"), 1e-12);
    assertFalse(size.containsKey("zero between checks"));
    Map<String, Double> taper = lines(at(open, 12, 0.02).minus(at(open, 60, 0.01)).budget());
    assertEquals(0.002 / SQRT3, taper.get("zero not checked again"), 1e-12);
  }

  @Test
  void readingAfterTheLastCheckCountsAsNotCheckedAgain() {
    Diameter late = Gaugings.usual().diameter(new BoreReading(12, "thrust", 1000.1, 0.02, null));
    assertTrue(lines(late.budget()).containsKey("zero not checked again"));
  }

  @Test
  void differenceTakesTheLargerOfTheZerosMoves() {
    BoreGauging session =
        Gaugings.with(
            ZeroLine.of(
                new ZeroCheck(0, 0, 20),
                new ZeroCheck(100, 0.0004, 20),
                new ZeroCheck(200, 0.0016, 20)),
            GaugeAccuracy.of(0.001, 0.002));
    Diameter early = session.diameter(new BoreReading(12, "pin", 50, 0.01, null));
    Diameter late = session.diameter(new BoreReading(60, "pin", 150, 0.01, null));
    assertEquals(0.0002 / SQRT3, lines(early.budget()).get("zero between checks"), 1e-12);
    assertEquals(
        0.0006 / SQRT3, lines(early.minus(late).budget()).get("zero between checks"), 1e-12);
  }

  @Test
  void linesThatThePermissibleErrorHoldsAreLeftOut() {
    BoreGauging session =
        Gaugings.with(Gaugings.STILL, new GaugeAccuracy(0.001, 0.002, true, true));
    Map<String, Double> found = lines(at(session, 12, 0.02).budget());
    assertFalse(found.containsKey("resolution of the zero"));
    assertFalse(found.containsKey("resolution of readings"));
    assertFalse(found.containsKey("repeatability"));
    assertFalse(found.containsKey("repeatability of the zero"));
    assertEquals(0.002 / SQRT3, found.get("gauge permissible error"), 1e-12);
  }

  @Test
  void readingsOwnScatterReplacesTheSessionsRepeatability() {
    Diameter rocked = Gaugings.usual().diameter(new BoreReading(12, "thrust", 500, 0.02, 0.0003));
    Map<String, Double> found = lines(rocked.budget());
    assertEquals(0.0003, found.get("scatter of samples"), 1e-15);
    assertFalse(found.containsKey("repeatability"));
    Map<String, Double> mixed = lines(rocked.minus(at(Gaugings.usual(), 60, 0.01)).budget());
    assertEquals(0.0003, mixed.get("scatter of samples"), 1e-15);
    assertEquals(0.0008, mixed.get("repeatability"), 1e-15);
  }

  @Test
  void checksWithTheirOwnScatterCountByHowNearTheyAre() {
    BoreGauging session =
        Gaugings.with(
            ZeroLine.of(
                new ZeroCheck(0, 0, 20.4, 0.0003), new ZeroCheck(1000, 0.001, 20.4, 0.0004)),
            GaugeAccuracy.of(0.001, 0.002));
    Diameter early = session.diameter(new BoreReading(12, "pin", 250, 0.02, 0.0002));
    assertEquals(
        Math.hypot(0.75 * 0.0003, 0.25 * 0.0004),
        lines(early.budget()).get("scatter of the zero"),
        1e-15);
    assertFalse(lines(early.budget()).containsKey("repeatability of the zero"));
    Diameter last = session.diameter(new BoreReading(12, "pin", 1500, 0.02, 0.0002));
    assertEquals(0.0004, lines(last.budget()).get("scatter of the zero"), 1e-15);
  }

  @Test
  void unknownRepeatabilityHasNoLine() {
    Map<String, Double> found =
        lines(Gaugings.diameter(Gaugings.exact(), 12, "pin", 100.01).budget());
    assertFalse(found.containsKey("repeatability"));
    assertFalse(found.containsKey("scatter of samples"));
  }

  @Test
  void averagedReadingsScatterLessAndKeepTheStudysDegreesOfFreedom() {
    BoreGauging usual = Gaugings.usual();
    BoreGauging averaged =
        new BoreGauging(
            usual.setting(),
            usual.zero(),
            usual.gauge(),
            new Repeatability(0.0008, 30, 4),
            usual.blockTempC(),
            usual.boreCtePerK(),
            usual.thermal());
    Component line =
        at(averaged, 12, 0.02).budget().components().stream()
            .filter(each -> each.name().equals("repeatability"))
            .findFirst()
            .orElseThrow();
    assertEquals(0.0004, line.standardUncertaintyMm(), 1e-15);
    assertEquals(30, line.degreesOfFreedom());
  }

  @Test
  void meanOfTwoAxesHasTheGaugesErrorOnceAndTheirOwnScatterLess() {
    BoreProfile profile =
        Gaugings.profile(Gaugings.usual(), new double[] {12}, new double[] {96.01, 96.02});
    Map<String, Double> found = lines(profile.sections().get(0).mean().budget());
    assertEquals(0.0008 / Math.sqrt(2), found.get("repeatability"), 1e-12);
    assertEquals(0.001 / SQRT12 / Math.sqrt(2), found.get("resolution of readings"), 1e-12);
    assertEquals(0.001 / SQRT12, found.get("resolution of the zero"), 1e-12);
    assertEquals(0.002 / SQRT3, found.get("gauge permissible error"), 1e-12);
    assertEquals(0.0005, found.get("setting calibration"), 1e-12);
  }

  @Test
  void perimetersBudgetIsPiTimesThatOfTheMean() {
    BoreProfile profile =
        Gaugings.profile(Gaugings.usual(), new double[] {12}, new double[] {96.01, 96.02});
    double mean = profile.sections().get(0).mean().budget().combinedMm();
    assertEquals(Math.PI * mean, profile.perimeterAt(12).budget().combinedMm(), 1e-12);
    assertEquals(Math.PI * mean, profile.perimeterAt(12).estimate().standardUncertaintyMm(), 1e-12);
  }

  @Test
  void settingMicrometerAddsItsOwnPermissibleError() {
    BoreGauging usual = Gaugings.usual();
    BoreGauging session =
        new BoreGauging(
            new SettingStandard(96, 0.001, 11.5e-6, 0.003),
            usual.zero(),
            usual.gauge(),
            usual.repeatability(),
            20,
            11.4e-6,
            ThermalUncertainty.DEFAULT);
    Map<String, Double> size = lines(at(session, 12, 0.02).budget());
    assertEquals(0.003 / SQRT3, size.get("setting permissible error"), 1e-12);
    Map<String, Double> taper = lines(at(session, 12, 0.02).minus(at(session, 60, 0.01)).budget());
    assertFalse(taper.containsKey("setting permissible error"));
  }

  @Test
  void readingsOfTwoSessionsShareOnlyTheirSetting() {
    Diameter first = at(drifting(0.001), 12, 0.02);
    Diameter second = at(drifting(0.0006), 60, 0.01);
    List<String> names = new ArrayList<>();
    first.minus(second).budget().components().forEach(each -> names.add(each.name()));
    assertFalse(names.contains("setting calibration"));
    assertEquals(2, names.stream().filter("block temperature"::equals).count());
    assertEquals(2, names.stream().filter("gauge permissible error"::equals).count());
  }

  @Test
  void taperIsKnownBetterThanASize() {
    BoreProfile profile =
        Gaugings.profile(
            Gaugings.usual(),
            new double[] {12, 60},
            new double[] {96.02, 96.01},
            new double[] {96.00, 96.00});
    double taper = profile.largestTaper().orElseThrow().amount().standardUncertaintyMm();
    double size = profile.largest().size().standardUncertaintyMm();
    assertTrue(taper < size + 1e-9, taper + " against " + size);
  }
}
