package boreledger.calc.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import boreledger.calc.uncertainty.Budget;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GapTaperTest {
  private static final double IRON = 11.4e-6;
  private static final Budget FEELER = GapBudget.byFeeler(0.005, 0.02);

  private static GapReading gap(double depthMm, double gapMm) {
    return new GapReading(depthMm, gapMm, 20, FEELER);
  }

  private static GapTaper taper(GapReading... gaps) {
    return GapTaper.of(96, IRON, Ring.of(IRON), List.of(gaps));
  }

  @Test
  void taperIsTheGapsChangeOverPi() {
    // Exact geometry: 0.078539816339745 mm of gap are 0.025 mm of diameter.
    GapTaper found = taper(gap(12, 0.5), gap(108, 0.5 - 0.078539816339745));
    assertEquals(0.025, found.amount().valueMm(), 1e-12);
    assertEquals(0.025, found.signed().valueMm(), 1e-12);
  }

  @Test
  void amountIsOfTheExtremesAndSignedOfTheEnds() {
    GapTaper found = taper(gap(108, 0.48), gap(60, 0.40), gap(12, 0.45));
    assertEquals(0.08 / Math.PI, found.amount().valueMm(), 1e-12);
    assertEquals(-0.03 / Math.PI, found.signed().valueMm(), 1e-12);
  }

  @Test
  void uncertaintyIsOfBothGapsAndTheFibreOverPi() {
    GapTaper found = taper(gap(12, 0.5), gap(108, 0.4));
    double fibre = 0.1 * 4 / (92 * Math.sqrt(3));
    double expected = Math.hypot(Math.sqrt(2) * FEELER.combinedMm(), fibre) / Math.PI;
    assertEquals(expected, found.amount().standardUncertaintyMm(), 1e-12);
    assertEquals(5, found.amount().budget().components().size());
  }

  @Test
  void readingsAtUnlikeTemperaturesAreBroughtTogether() {
    Seeds.each(
        random -> {
          double cteBore = Seeds.between(random, 1e-5, 2.3e-5);
          double length = Math.PI * 96 - 0.4;
          double taperMm = Seeds.between(random, -0.05, 0.05);
          List<GapReading> gaps = new ArrayList<>();
          for (int j = 0; j < 2; j++) {
            double temp = Seeds.between(random, 15, 35);
            double bore = Math.PI * (96 - j * taperMm) * (1 + cteBore * (temp - 20));
            double gapMm = bore - length * (1 + IRON * (temp - 20));
            gaps.add(new GapReading(10 + 50 * j, gapMm, temp, FEELER));
          }
          GapTaper found = GapTaper.of(96, cteBore, Ring.of(IRON), gaps);
          // The nominal bore stands for the true one: 0.1 mm off moves the result by 10 nm at most.
          assertEquals(taperMm, found.signed().valueMm(), 1e-5);
          assertEquals(Math.abs(taperMm), found.amount().valueMm(), 1e-5);
        });
  }

  @Test
  void fewerThanTwoGapsAreRefused() {
    assertEquals(
        "1 gap readings given, at least 2 needed",
        assertThrows(ImpossibleInput.class, () -> taper(gap(12, 0.5))).getMessage());
  }

  @Test
  void twoGapsAtOneDepthAreRefused() {
    assertEquals(
        "two of the gaps for a taper are from one depth",
        assertThrows(ImpossibleInput.class, () -> taper(gap(12, 0.5), gap(12, 0.4))).getMessage());
    assertThrows(
        ImpossibleInput.class,
        () -> GapTaper.of(0, IRON, Ring.of(IRON), List.of(gap(1, 0.5), gap(2, 0.4))));
  }
}
