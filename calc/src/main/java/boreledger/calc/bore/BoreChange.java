package boreledger.calc.bore;

import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;

/**
 * What a bore's diameter became between two sessions, such as 0.010 mm larger after honing.
 *
 * <ul>
 *   <li>The calibration of a setting that both sessions were zeroed on leaves the difference.
 *   <li>A bore's expansion coefficient is wrong by the same amount in both: only the difference of
 *       the block's temperatures counts.
 *   <li>So is the setting's; the signs of its deviations from 20 degrees Celsius are not kept, and
 *       both are taken as adding up, which is never too little.
 *   <li>All else, the gauge's permissible error too, is taken as each session's own: with one gauge
 *       in both that is rather too much than too little.
 * </ul>
 *
 * @param before the diameter in the first session
 * @param after the diameter at the same position in the second, which is another session even if
 *     all that held for it is equal
 */
public record BoreChange(Diameter before, Diameter after) {
  /** After less before, with the budget of the difference. */
  public Estimate estimate() {
    List<Component> lines = new ArrayList<>(before.budget().components());
    lines.addAll(after.budget().components());
    if (before.gauging().boreCtePerK() == after.gauging().boreCtePerK()) {
      lines.removeIf(line -> line.name().equals(SharedLines.BORE_COEFFICIENT));
      lines.add(Component.typeB(SharedLines.BORE_COEFFICIENT, boreCoefficientMm()));
    }
    if (before.gauging().setting().equals(after.gauging().setting())) {
      lines.removeIf(line -> SharedLines.CALIBRATION.contains(line.name()));
      addUp(lines, SharedLines.SETTING_COEFFICIENT);
    }
    return new Estimate(after.diameterMm() - before.diameterMm(), new Budget(lines));
  }

  private double boreCoefficientMm() {
    double ctePerK =
        Math.max(before.gauging().thermal().ctePerK(), after.gauging().thermal().ctePerK());
    double apartK = after.gauging().blockTempC() - before.gauging().blockTempC();
    return after.diameterMm() * ctePerK * Math.abs(apartK);
  }

  private static void addUp(List<Component> lines, String name) {
    double sumMm =
        lines.stream()
            .filter(line -> line.name().equals(name))
            .mapToDouble(Component::standardUncertaintyMm)
            .sum();
    lines.removeIf(line -> line.name().equals(name));
    lines.add(Component.typeB(name, sumMm));
  }
}
