package boreledger.calc.ring;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.Perimeter;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.Comparator;
import java.util.List;

/**
 * A ring with its gap readings in the bore they were taken in, all after the last filing.
 *
 * @param bore the cylinder's bore
 * @param boreCtePerK the bore's linear expansion coefficient per kelvin
 * @param ring the ring
 * @param gaps its gap readings, one per depth; kept in order of depth; may be empty
 */
public record GappedRing(BoreProfile bore, double boreCtePerK, Ring ring, List<GapReading> gaps) {
  /**
   * Sorts a copy of the readings and checks them.
   *
   * @throws ImpossibleInput when a depth is there twice
   */
  public GappedRing {
    Require.finite("bore's expansion coefficient", boreCtePerK, "per kelvin");
    gaps = gaps.stream().sorted(Comparator.comparingDouble(GapReading::depthMm)).toList();
    for (int i = 1; i < gaps.size(); i++) {
      if (gaps.get(i).depthMm() == gaps.get(i - 1).depthMm()) {
        throw new ImpossibleInput("two gaps given at depth " + gaps.get(i).depthMm() + " mm");
      }
    }
  }

  /** Each reading held against the bore and the other readings, from the deck down. */
  public List<GapAgreement> agreements() {
    List<PlacedGap> placed = placed();
    return placed.stream().map(each -> agreement(each, placed)).toList();
  }

  private GapAgreement agreement(PlacedGap one, List<PlacedGap> all) {
    Perimeter shallowest = all.get(0).perimeter();
    return new GapAgreement(
        one.reading(),
        one.perimeter(),
        one.atReferenceMm(),
        one.perimeter().lengthMm() - shallowest.lengthMm(),
        expectation(one, all));
  }

  private Expectation expectation(PlacedGap one, List<PlacedGap> all) {
    List<PlacedGap> others = all.stream().filter(each -> each != one).toList();
    if (others.isEmpty()) {
      return new Expectation.TooFewDepths(all.size(), 2);
    }
    return RingLength.of(others).predict(one, ring);
  }

  List<PlacedGap> placed() {
    return gaps.stream().map(this::place).toList();
  }

  private PlacedGap place(GapReading gap) {
    Perimeter perimeter = bore.perimeterAt(gap.depthMm());
    double lengthMm =
        ring.developedLengthMm(perimeter.lengthMm(), gap.gapMm(), gap.tempC(), boreCtePerK);
    return new PlacedGap(gap, perimeter, lengthMm);
  }
}
