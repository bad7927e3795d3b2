package boreledger.calc.bore;

import java.util.List;

/**
 * The perimeter over depth: straight between the gauged depths, level outside them.
 *
 * @param gauged at the gauged depths, from the deck down
 */
record PerimeterLine(List<Perimeter> gauged) {
  Perimeter at(double depthMm) {
    Perimeter first = gauged.get(0);
    Perimeter last = gauged.get(gauged.size() - 1);
    if (depthMm < first.depthMm()) {
      return level(first, depthMm, first.lengthMm(), Reach.ABOVE);
    }
    if (depthMm > last.depthMm()) {
      return level(last, depthMm, Math.min(last.lengthMm(), continuedMm(depthMm)), Reach.BELOW);
    }
    int next = 0;
    while (gauged.get(next).depthMm() < depthMm) {
      next++;
    }
    Perimeter deeper = gauged.get(next);
    return deeper.depthMm() == depthMm ? deeper : between(gauged.get(next - 1), deeper, depthMm);
  }

  private static Perimeter level(
      Perimeter nearest, double depthMm, double cautiousMm, Reach reach) {
    return new Perimeter(depthMm, nearest.lengthMm(), cautiousMm, nearest.sensitivity(), reach);
  }

  private static Perimeter between(Perimeter upper, Perimeter lower, double depthMm) {
    double part = (depthMm - upper.depthMm()) / (lower.depthMm() - upper.depthMm());
    double lengthMm = upper.lengthMm() + part * (lower.lengthMm() - upper.lengthMm());
    WeightedDiameters sensitivity =
        upper.sensitivity().times(1 - part).plus(lower.sensitivity().times(part));
    return new Perimeter(depthMm, lengthMm, lengthMm, sensitivity, Reach.BETWEEN);
  }

  /** The line through the two deepest, carried on; level when there is only one. */
  private double continuedMm(double depthMm) {
    Perimeter last = gauged.get(gauged.size() - 1);
    if (gauged.size() < 2) {
      return last.lengthMm();
    }
    Perimeter before = gauged.get(gauged.size() - 2);
    double slope = (last.lengthMm() - before.lengthMm()) / (last.depthMm() - before.depthMm());
    return last.lengthMm() + slope * (depthMm - last.depthMm());
  }
}
