package boreledger.calc.bore;

import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.TypeB;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Budget lines that all readings of a session share; a difference within the session has none. */
final class SharedLines {
  static final String BORE_COEFFICIENT = "bore expansion coefficient";
  static final String SETTING_COEFFICIENT = "setting expansion coefficient";

  private static final String SETTING_CALIBRATION = "setting calibration";
  private static final String SETTING_ERROR = "setting permissible error";

  /** The lines that sessions zeroed on the same setting have in common. */
  static final Set<String> CALIBRATION = Set.of(SETTING_CALIBRATION, SETTING_ERROR);

  /** Weights are sums of fractions such as 1/3, which cancel only to their last digits. */
  private static final double CANCELLED = 1e-9;

  private SharedLines() {}

  static List<Component> calibration(SettingStandard setting, double net) {
    if (cancelled(net)) {
      return List.of();
    }
    List<Component> lines = new ArrayList<>();
    lines.add(
        Component.typeB(SETTING_CALIBRATION, TypeB.expanded(setting.expandedUncertaintyMm(), 2)));
    if (setting.maxErrorMm() > 0) {
      lines.add(Component.typeB(SETTING_ERROR, TypeB.rectangular(setting.maxErrorMm())));
    }
    return lines.stream().map(line -> line.times(net)).toList();
  }

  static List<Component> of(BoreGauging session, Map<Diameter, Double> weights) {
    double net = weights.values().stream().mapToDouble(Double::doubleValue).sum();
    if (cancelled(net)) {
      return List.of();
    }
    List<Component> lines = new ArrayList<>();
    if (!session.gauge().maxErrorIncludesResolution()) {
      lines.add(
          Component.typeB(
              "resolution of the zero", TypeB.resolution(session.gauge().resolutionMm())));
    }
    double boreMm =
        weights.keySet().stream().mapToDouble(Diameter::diameterMm).average().orElseThrow();
    lines.addAll(ofBore(session, boreMm));
    lines.addAll(ofSetting(session));
    List<Component> all = new ArrayList<>(lines.stream().map(line -> line.times(net)).toList());
    if (!session.gauge().maxErrorIncludesRepeatability()) {
      all.addAll(ZeroScatter.of(session, weights));
    }
    return all;
  }

  private static List<Component> ofBore(BoreGauging session, double boreMm) {
    ThermalUncertainty thermal = session.thermal();
    double fromReferenceK = Math.abs(session.blockTempC() - ReferenceTemperature.C);
    return List.of(
        Component.typeB(BORE_COEFFICIENT, boreMm * thermal.ctePerK() * fromReferenceK),
        Component.typeB(
            "block temperature", boreMm * Math.abs(session.boreCtePerK()) * thermal.temperatureK()),
        Component.typeB("gauge growth", boreMm * thermal.gaugeCtePerK() * thermal.gaugeWarmingK()));
  }

  private static List<Component> ofSetting(BoreGauging session) {
    SettingStandard setting = session.setting();
    ThermalUncertainty thermal = session.thermal();
    double fromReferenceK = session.zero().farthestFromReferenceK();
    return List.of(
        Component.typeB(
            "setting temperature",
            setting.sizeMm() * Math.abs(setting.ctePerK()) * thermal.temperatureK()),
        Component.typeB(
            SETTING_COEFFICIENT, setting.sizeMm() * thermal.ctePerK() * fromReferenceK));
  }

  private static boolean cancelled(double net) {
    return Math.abs(net) < CANCELLED;
  }
}
