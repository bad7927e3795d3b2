package boreledger.calc.bore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class DiameterTest {
  private static final double STEEL = 11.5e-6;
  private static final double ALUMINIUM = 23.1e-6;

  private static double diameterMm(
      double settingTempC, double blockTempC, double boreCte, double reading, double zero) {
    BoreGauging session =
        new BoreGauging(
            SettingStandard.ring(100, 0.001, STEEL),
            ZeroLine.of(new ZeroCheck(0, zero, settingTempC)),
            GaugeAccuracy.of(0.001, 0.002),
            null,
            blockTempC,
            boreCte,
            ThermalUncertainty.DEFAULT);
    return session.diameter(new BoreReading(10, "thrust", 1, reading, null)).diameterMm();
  }

  @Test
  void atReferenceTemperatureItIsSettingPlusReadingLessZero() {
    assertEquals(100.010, diameterMm(20, 20, STEEL, 0.012, 0.002), 1e-12);
  }

  @Test
  void aGaugeThatShowsSizesGivesTheSameAsOneThatShowsDeviations() {
    double deviation = diameterMm(24, 23, ALUMINIUM, 0.012, 0.002);
    double size = diameterMm(24, 23, ALUMINIUM, 100.012, 100.002);
    assertEquals(deviation, size, 1e-12);
  }

  @Test
  void ringAndBoreOfOneMaterialAtOneTemperatureNeedNoCorrection() {
    assertEquals(100, diameterMm(25, 25, STEEL, 0, 0), 1e-12);
  }

  @Test
  void fiveKelvinMoveAluminiumAgainstSteelByTheHandbooksDifference() {
    // 100 mm, 5 K: steel 5.75 um, aluminium 11.55 um, difference 5.80 um; coefficients of D. A.
    // Swyt,
    // J. Res. NIST 99 (1994) 31. At 25 degrees a bore that reads as the ring is smaller at 20.
    assertEquals(-0.00580, diameterMm(25, 25, ALUMINIUM, 0, 0) - 100, 1e-6);
    assertEquals(0.00575, diameterMm(25, 20, ALUMINIUM, 0, 0) - 100, 1e-12);
    assertEquals(-0.01155, diameterMm(20, 25, ALUMINIUM, 0, 0) - 100, 2e-6);
  }

  @Test
  void zeroThatMovedIsTakenOffByTime() {
    BoreGauging session =
        Gaugings.with(
            ZeroLine.of(new ZeroCheck(0, 0, 20), new ZeroCheck(100, 0.004, 20)),
            GaugeAccuracy.of(0.001, 0.002));
    double early = session.diameter(new BoreReading(10, "pin", 0, 0.02, null)).diameterMm();
    double late = session.diameter(new BoreReading(10, "pin", 100, 0.02, null)).diameterMm();
    assertEquals(0.004, early - late, 1e-6);
  }

  @Test
  void driftBeyondThePermissibleErrorIsSeen() {
    GaugeAccuracy gauge = GaugeAccuracy.of(0.001, 0.002);
    assertFalse(Gaugings.with(drifting(0.0019), gauge).driftBeyondPermissibleError());
    assertTrue(Gaugings.with(drifting(-0.0021), gauge).driftBeyondPermissibleError());
    assertEquals(0.0021, Gaugings.with(drifting(-0.0021), gauge).zeroDriftMm(), 1e-12);
  }

  private static ZeroLine drifting(double byMm) {
    return ZeroLine.of(new ZeroCheck(0, 0, 20), new ZeroCheck(100, byMm, 20));
  }

  @Test
  void repeatedReadingsScatterAsInGum443() {
    // JCGM 100:2008, 4.4.3 and Table 1: 20 temperatures, printed s 1.49 and s of the mean 0.33
    // (data and prints from memory).
    List<Double> temperatures =
        ReferenceTable.rows("gum_4_4_3_temperatures.csv").stream()
            .map(row -> Double.parseDouble(row.get("t_degC")))
            .toList();
    Repeatability found = Repeatability.ofRepeats(temperatures);
    assertEquals(1.49, found.standardDeviationMm(), 0.005);
    assertEquals(1.488844, found.standardDeviationMm(), 1e-6);
    assertEquals(19, found.degreesOfFreedom());
    assertEquals(1, found.readings());
    Repeatability ofMean = new Repeatability(found.standardDeviationMm(), 19, 20);
    assertEquals(0.33, ofMean.standardUncertaintyMm(), 0.005);
    assertEquals(
        "1 repeated readings given, at least 2 needed",
        assertThrows(ImpossibleInput.class, () -> Repeatability.ofRepeats(List.of(1.0)))
            .getMessage());
  }

  @Test
  void scalingAllLengthsScalesTheDiameter() {
    Seeds.each(
        random -> {
          double factor = Seeds.between(random, 0.1, 10);
          double reading = Seeds.between(random, -0.2, 0.5);
          double zero = Seeds.between(random, -0.01, 0.01);
          double size = Seeds.between(random, 50, 120);
          double small = scaled(1, size, zero, reading);
          assertEquals(factor * small, scaled(factor, size, zero, reading), 1e-12 * small * factor);
        });
  }

  private static double scaled(double factor, double size, double zero, double reading) {
    BoreGauging session =
        new BoreGauging(
            SettingStandard.ring(factor * size, 0, STEEL),
            ZeroLine.of(new ZeroCheck(0, factor * zero, 22)),
            GaugeAccuracy.of(0.001, 0.002),
            null,
            24,
            ALUMINIUM,
            ThermalUncertainty.DEFAULT);
    return session.diameter(new BoreReading(1, "pin", 0, factor * reading, null)).diameterMm();
  }

  @Test
  void aBoreOfNothingIsRefused() {
    ImpossibleInput refused =
        assertThrows(ImpossibleInput.class, () -> diameterMm(20, 20, STEEL, -100, 0));
    assertEquals("diameter 0.0 mm is not above zero", refused.getMessage());
  }

  @Test
  void impossibleInputsAreRefused() {
    assertThrows(ImpossibleInput.class, () -> new BoreReading(-1, "pin", 0, 0, null));
    assertThrows(ImpossibleInput.class, () -> new BoreReading(1, "pin", Double.NaN, 0, null));
    assertThrows(ImpossibleInput.class, () -> new BoreReading(1, "pin", 0, Double.NaN, null));
    assertThrows(ImpossibleInput.class, () -> new BoreReading(1, "pin", 0, 0, -0.1));
    assertThrows(ImpossibleInput.class, () -> SettingStandard.ring(0, 0, STEEL));
    assertThrows(ImpossibleInput.class, () -> SettingStandard.ring(96, -1, STEEL));
    assertThrows(ImpossibleInput.class, () -> SettingStandard.ring(96, 0, Double.NaN));
    assertThrows(ImpossibleInput.class, () -> new SettingStandard(96, 0, STEEL, -1));
    assertThrows(ImpossibleInput.class, () -> GaugeAccuracy.of(-1, 0));
    assertThrows(ImpossibleInput.class, () -> GaugeAccuracy.of(0, -1));
    assertThrows(ImpossibleInput.class, () -> new Repeatability(-1, 5, 1));
    assertThrows(ImpossibleInput.class, () -> new Repeatability(1, 5, 0));
    assertThrows(ImpossibleInput.class, () -> new Repeatability(1, 0, 1));
    assertThrows(ImpossibleInput.class, () -> new ThermalUncertainty(-1, 0, 0, 0));
    assertThrows(ImpossibleInput.class, () -> new ThermalUncertainty(0, -1, 0, 0));
    assertThrows(ImpossibleInput.class, () -> new ThermalUncertainty(0, 0, -1, 0));
    assertThrows(ImpossibleInput.class, () -> new ThermalUncertainty(0, 0, 0, -1));
    assertThrows(ImpossibleInput.class, () -> new ZeroCheck(Double.NaN, 0, 20));
    assertThrows(ImpossibleInput.class, () -> new ZeroCheck(0, Double.NaN, 20));
    assertThrows(ImpossibleInput.class, () -> new ZeroCheck(0, 0, Double.NaN));
    assertThrows(ImpossibleInput.class, () -> diameterMm(20, Double.NaN, STEEL, 0, 0));
    assertThrows(ImpossibleInput.class, () -> diameterMm(20, 20, Double.NaN, 0, 0));
  }
}
