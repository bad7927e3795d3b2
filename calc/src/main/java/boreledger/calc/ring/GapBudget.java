package boreledger.calc.ring;

import boreledger.calc.bore.GaugeAccuracy;
import boreledger.calc.bore.Repeatability;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.TypeB;
import java.util.ArrayList;
import java.util.List;

/** How well a single gap reading is known. */
public final class GapBudget {
  private GapBudget() {}

  /**
   * Between a feeler leaf that goes and the next that does not.
   *
   * @param leafMaxErrorMm the leaf's permissible error in millimetres
   * @param stepMm from the leaf that goes to the one that does not, in millimetres
   */
  public static Budget byFeeler(double leafMaxErrorMm, double stepMm) {
    return Budget.of(
        Component.typeB("feeler leaf", TypeB.rectangular(leafMaxErrorMm)),
        Component.typeB("step between leaves", TypeB.rectangular(stepMm / 2)));
  }

  /**
   * By a gauge that shows the gap.
   *
   * @param gauge what the gauge promises
   * @param repeatability how its readings scatter; null when not known
   */
  public static Budget byGauge(GaugeAccuracy gauge, Repeatability repeatability) {
    List<Component> lines = new ArrayList<>();
    lines.add(Component.typeB("gauge permissible error", TypeB.rectangular(gauge.maxErrorMm())));
    if (!gauge.maxErrorIncludesResolution()) {
      lines.add(Component.typeB("resolution of readings", TypeB.resolution(gauge.resolutionMm())));
    }
    if (repeatability != null && !gauge.maxErrorIncludesRepeatability()) {
      lines.add(
          new Component(
              "repeatability",
              repeatability.standardUncertaintyMm(),
              repeatability.degreesOfFreedom()));
    }
    return new Budget(lines);
  }
}
