package boreledger.calc.bore;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The gauge's zero over time: straight between neighbouring checks, level before the first and
 * after the last.
 *
 * @param checks one or more, each later than the one before
 */
public record ZeroLine(List<ZeroCheck> checks) {
  /**
   * Takes a copy and checks the order.
   *
   * @throws ImpossibleInput when there is no check, or one is not later than the one before
   */
  public ZeroLine {
    checks = List.copyOf(checks);
    Require.atLeast(1, checks.size(), "checks on the setting");
    for (int i = 1; i < checks.size(); i++) {
      if (checks.get(i).tS() <= checks.get(i - 1).tS()) {
        throw new ImpossibleInput(
            String.format(
                Locale.ROOT,
                "check on the setting at %s s is not later than the one before at %s s",
                checks.get(i).tS(),
                checks.get(i - 1).tS()));
      }
    }
  }

  /** The zero of these checks. */
  public static ZeroLine of(ZeroCheck... checks) {
    return new ZeroLine(List.of(checks));
  }

  /**
   * What the gauge shows too much at a time: its reading on the standard less the standard's size
   * then, in millimetres.
   */
  double offsetMm(double tS, SettingStandard setting) {
    return at(tS, check -> check.offsetMm(setting));
  }

  /** The reading on the standard as it runs between the checks, in millimetres. */
  public double readingMm(double tS) {
    return at(tS, ZeroCheck::readingMm);
  }

  /** How far apart the checks' offsets lie, in millimetres; 0 with a single check. */
  double spreadMm(SettingStandard setting) {
    DoubleSummaryStatistics offsets =
        checks.stream().mapToDouble(check -> check.offsetMm(setting)).summaryStatistics();
    return offsets.getMax() - offsets.getMin();
  }

  /** Whether a time lies between two checks, both ends included. */
  public boolean brackets(double tS) {
    return checks.size() > 1
        && tS >= checks.get(0).tS()
        && tS <= checks.get(checks.size() - 1).tS();
  }

  /** How far the zero moved between the two checks around a time; 0 outside all checks. */
  double changeAroundMm(double tS, SettingStandard setting) {
    if (!brackets(tS)) {
      return 0;
    }
    int next = indexAfter(tS);
    return Math.abs(checks.get(next).offsetMm(setting) - checks.get(next - 1).offsetMm(setting));
  }

  /** The farthest that the standard was from 20 degrees Celsius at any check, in kelvin. */
  double farthestFromReferenceK() {
    return checks.stream()
        .mapToDouble(check -> Math.abs(check.settingTempC() - ReferenceTemperature.C))
        .max()
        .orElseThrow();
  }

  /**
   * How much each check counts in the zero at a time: the two neighbours by their distance, one
   * alone outside all; a check that does not count is left out.
   */
  Map<ZeroCheck, Double> sharesAt(double tS) {
    if (!brackets(tS)) {
      return Map.of(checks.get(tS < checks.get(0).tS() ? 0 : checks.size() - 1), 1.0);
    }
    int next = indexAfter(tS);
    ZeroCheck before = checks.get(next - 1);
    ZeroCheck after = checks.get(next);
    double part = (tS - before.tS()) / (after.tS() - before.tS());
    Map<ZeroCheck, Double> shares = new LinkedHashMap<>();
    shares.put(before, 1 - part);
    shares.put(after, part);
    shares.values().removeIf(share -> share == 0);
    return shares;
  }

  private double at(double tS, ToDoubleFunction<ZeroCheck> quantity) {
    Require.finite("time of a reading", tS, "s");
    if (!brackets(tS)) {
      int nearest = tS < checks.get(0).tS() ? 0 : checks.size() - 1;
      return quantity.applyAsDouble(checks.get(nearest));
    }
    int next = indexAfter(tS);
    ZeroCheck before = checks.get(next - 1);
    ZeroCheck after = checks.get(next);
    double part = (tS - before.tS()) / (after.tS() - before.tS());
    double start = quantity.applyAsDouble(before);
    return start + part * (quantity.applyAsDouble(after) - start);
  }

  private int indexAfter(double tS) {
    int next = 1;
    while (next < checks.size() - 1 && checks.get(next).tS() < tS) {
      next++;
    }
    return next;
  }
}
