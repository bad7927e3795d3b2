package boreledger.calc.bore;

import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The budget of a weighted sum of diameters, session by session. The standard's calibration is the
 * same in every session that used it; all else is a session's own.
 */
final class DiameterBudget {
  private DiameterBudget() {}

  static Budget of(Map<Diameter, Double> weights) {
    Map<SettingStandard, Double> netBySetting = new LinkedHashMap<>();
    Map<BoreGauging, Map<Diameter, Double>> bySession = new LinkedHashMap<>();
    weights.forEach(
        (diameter, weight) -> {
          BoreGauging session = diameter.gauging();
          netBySetting.merge(session.setting(), weight, Double::sum);
          bySession.computeIfAbsent(session, fresh -> new LinkedHashMap<>()).put(diameter, weight);
        });
    List<Component> lines = new ArrayList<>();
    netBySetting.forEach((setting, net) -> lines.addAll(SharedLines.calibration(setting, net)));
    bySession.forEach(
        (session, part) -> {
          lines.addAll(SharedLines.of(session, part));
          lines.addAll(ReadingLines.of(session, part));
        });
    return new Budget(lines);
  }
}
