package boreledger.station.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.drawing.RoundSection.Diameter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoundSectionTest {
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 5})
  void theCurvePassesThroughEveryAxis(int axes) {
    RoundSection section = section(axes, 96.020, 96.010, 96.013, 96.017, 96.012);

    int compared = 0;
    for (Diameter each : section.diametersMm()) {
      double expected = each.mm() - section.meanMm();
      assertEquals(expected, section.deviationMm(each.deg()), 1e-12);
      assertEquals(expected, section.deviationMm(each.deg() + 180), 1e-12);
      compared++;
    }
    assertEquals(axes, compared);
  }

  /** With two axes a quarter turn apart the first harmonic of a diameter is a cos 2θ. */
  @Test
  void twoAxesGiveAnOval() {
    RoundSection section = section(2, 96.010, 96.000);

    for (int deg = 0; deg < 360; deg += 15) {
      assertEquals(
          0.005 * Math.cos(Math.toRadians(2 * deg)), section.deviationMm(deg), 1e-12, "at " + deg);
    }
  }

  @Test
  void equalDiametersAreRound() {
    assertEquals(0, section(4, 96.0, 96.0, 96.0, 96.0).deviationMm(33), 1e-12);
  }

  @Test
  void aSingleAxisOrAMissingOneTellsNothing() {
    assertFalse(section(1, 96.0).whole());
    assertFalse(
        new RoundSection(
                12,
                List.of(new Diameter("thrust", 90, 96.0), new Diameter("pin", 0, null)),
                null,
                null)
            .whole());
    assertTrue(section(2, 96.0, 96.0).whole());
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 2.4e-4, 5e-5, 1e-6})
  void theExaggerationIsRoundAndKeepsTheDrawingInItsCircle(double share) {
    double times = RoundnessFigure.exaggeration(share);

    assertTrue(times * share <= 0.3 || times == 5000, "times " + times);
    assertTrue(List.of(100.0, 200.0, 500.0, 1000.0, 2000.0, 5000.0).contains(times), "" + times);
  }

  private static RoundSection section(int axes, double... mm) {
    List<Diameter> diameters = new ArrayList<>();
    for (int i = 0; i < axes; i++) {
      diameters.add(new Diameter("axis " + i, 180.0 / axes * i, mm[i]));
    }
    return new RoundSection(12, diameters, 0.01, 0.002);
  }
}
