package boreledger.calc.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import org.junit.jupiter.api.Test;

class HotGapTest {
  private static double hotGapMm(
      double bore,
      double cold,
      double boreCte,
      double wallTempC,
      double ringCte,
      double ringTempC) {
    return new RoundBoreHotGap(bore, new FreeExpansion(boreCte, ringCte), wallTempC, ringTempC)
        .hotGapMm(cold);
  }

  @Test
  void computedExamplesAreMet() {
    // g = pi D (1 + ab dTb) - (pi D - g0)(1 + ar dTr), recomputed with 20 digits.
    assertEquals(0.3002736, hotGapMm(100, 0.30, 11.4e-6, 100, 11.4e-6, 100), 1e-10);
    assertEquals(0.0141023499926, hotGapMm(100, 0.30, 11.4e-6, 120, 11.4e-6, 200), 1e-12);
    assertEquals(0.482209649728, hotGapMm(100, 0.40, 21.5e-6, 130, 11.7e-6, 200), 1e-12);
  }

  @Test
  void endsThatButtHaveANegativeGap() {
    assertEquals(-0.0673264774314, hotGapMm(82, 0.25, 11.4e-6, 110, 11.3e-6, 220), 1e-12);
  }

  @Test
  void uniformHeatScalesTheGapAlone() {
    Seeds.each(
        random -> {
          double cold = Seeds.between(random, 0, 1);
          double cte = Seeds.between(random, 1e-6, 3e-5);
          double temp = Seeds.between(random, -20, 300);
          assertEquals(
              cold * (1 + cte * (temp - 20)), hotGapMm(96, cold, cte, temp, cte, temp), 1e-10);
        });
  }

  @Test
  void coldGapForAMarginGivesThatMargin() {
    Seeds.each(
        random -> {
          RoundBoreHotGap gap =
              new RoundBoreHotGap(
                  Seeds.between(random, 60, 120),
                  new FreeExpansion(
                      Seeds.between(random, 1e-5, 1.2e-5), Seeds.between(random, 1.1e-5, 1.3e-5)),
                  Seeds.between(random, 90, 150),
                  Seeds.between(random, 180, 300));
          double margin = Seeds.between(random, 0, 0.2);
          assertEquals(margin, gap.hotGapMm(gap.coldGapForMm(margin)), 1e-10);
        });
  }

  @Test
  void impossibleNumbersAreRefused() {
    FreeExpansion iron = new FreeExpansion(11e-6, 12e-6);
    RoundBoreHotGap gap = new RoundBoreHotGap(96, iron, 130, 220);
    assertEquals(
        "cold gap -0.1 mm is negative",
        assertThrows(ImpossibleInput.class, () -> gap.hotGapMm(-0.1)).getMessage());
    assertThrows(ImpossibleInput.class, () -> gap.coldGapForMm(Double.NaN));
    assertThrows(ImpossibleInput.class, () -> new RoundBoreHotGap(0, iron, 130, 220));
    assertThrows(ImpossibleInput.class, () -> new RoundBoreHotGap(96, iron, Double.NaN, 220));
    assertThrows(ImpossibleInput.class, () -> new RoundBoreHotGap(96, iron, 130, Double.NaN));
    assertThrows(ImpossibleInput.class, () -> new FreeExpansion(Double.NaN, 0));
    assertThrows(ImpossibleInput.class, () -> new FreeExpansion(0, Double.NaN));
  }
}
