package boreledger.calc.ring;

import boreledger.calc.bore.ReferenceTemperature;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Estimate;
import java.util.Comparator;
import java.util.List;

/**
 * A bore's taper from one ring's gap readings alone, for somebody without a bore gauge: the mean
 * diameter changes by the gap's change over pi.
 *
 * @param amount largest minus smallest mean diameter, zero or more
 * @param signed shallowest minus deepest mean diameter, above zero in a bore that is wider at the
 *     top
 */
public record GapTaper(Estimate amount, Estimate signed) {
  /**
   * The taper between two or more depths.
   *
   * @param nominalBoreMm the bore, near enough, in millimetres; above zero
   * @param boreCtePerK the bore's linear expansion coefficient per kelvin
   * @param ring the ring
   * @param gaps its gaps, two or more, at different depths
   * @throws ImpossibleInput when there are fewer than two, or two at one depth
   */
  public static GapTaper of(
      double nominalBoreMm, double boreCtePerK, Ring ring, List<GapReading> gaps) {
    Require.atLeast(2, gaps.size(), "gap readings");
    Require.positive("bore", nominalBoreMm, "mm");
    if (gaps.stream().map(GapReading::depthMm).distinct().count() < gaps.size()) {
      throw new ImpossibleInput("two of the gaps for a taper are from one depth");
    }
    GapsAlone alone = new GapsAlone(nominalBoreMm, boreCtePerK, ring, gaps);
    List<GapReading> rising =
        gaps.stream().sorted(Comparator.comparingDouble(alone::perimeterMm)).toList();
    List<GapReading> downward =
        gaps.stream().sorted(Comparator.comparingDouble(GapReading::depthMm)).toList();
    int last = gaps.size() - 1;
    return new GapTaper(
        alone.difference(rising.get(last), rising.get(0)),
        alone.difference(downward.get(0), downward.get(last)));
  }

  private record GapsAlone(
      double nominalBoreMm, double boreCtePerK, Ring ring, List<GapReading> gaps) {
    /** The perimeter at 20 degrees Celsius, but for a constant that all readings share. */
    double perimeterMm(GapReading gap) {
      double meanGapMm = gaps.stream().mapToDouble(GapReading::gapMm).average().orElseThrow();
      double ringMm = Math.PI * nominalBoreMm - meanGapMm;
      double thenMm =
          ringMm * ReferenceTemperature.growth(ring.ctePerK(), gap.tempC()) + gap.gapMm();
      return thenMm / ReferenceTemperature.growth(boreCtePerK, gap.tempC());
    }

    Estimate difference(GapReading one, GapReading other) {
      double changeMm = perimeterMm(one) - perimeterMm(other);
      return new Estimate(
          changeMm / Math.PI,
          one.budget()
              .with(other.budget())
              .with(ring.fibre(changeMm, nominalBoreMm))
              .times(1 / Math.PI));
    }
  }
}
