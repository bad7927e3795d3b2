package boreledger.calc.bore;

import boreledger.calc.uncertainty.Estimate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which differences between two or more sections stand out, and what they are called together. */
record ShapeSearch(List<BoreSection> sections, IntendedProfile intended) {
  private record Middle(BoreShape shape, Estimate beyondEnds) {}

  BoreShape shape() {
    Estimate ends = difference(top(), bottom());
    Optional<Middle> middle = middle();
    boolean middleLeads =
        middle.isPresent()
            && (!standsOut(ends)
                || middle.get().beyondEnds().valueMm() >= Math.abs(ends.valueMm()));
    if (middleLeads) {
      return middle.get().shape();
    }
    if (!standsOut(ends)) {
      return BoreShape.STRAIGHT;
    }
    return ends.valueMm() > 0 ? BoreShape.WIDE_AT_TOP : BoreShape.WIDE_AT_BOTTOM;
  }

  /** The depth between the ends that lies farthest outside both, if any stands out. */
  private Optional<Middle> middle() {
    return sections.subList(1, sections.size() - 1).stream()
        .flatMap(
            each ->
                Stream.of(
                    new Middle(
                        BoreShape.BARREL,
                        nearer(difference(each, top()), difference(each, bottom()))),
                    new Middle(
                        BoreShape.WAIST,
                        nearer(difference(top(), each), difference(bottom(), each)))))
        .filter(each -> each.beyondEnds().valueMm() > 0 && standsOut(each.beyondEnds()))
        .max(Comparator.comparingDouble(each -> each.beyondEnds().valueMm()));
  }

  private static Estimate nearer(Estimate one, Estimate other) {
    return one.valueMm() <= other.valueMm() ? one : other;
  }

  private static boolean standsOut(Estimate difference) {
    return Math.abs(difference.valueMm()) > difference.expandedUncertaintyMm();
  }

  private Estimate difference(BoreSection one, BoreSection other) {
    WeightedDiameters means = one.mean().minus(other.mean());
    double intendedMm = intended.offsetMm(one.depthMm()) - intended.offsetMm(other.depthMm());
    return new Estimate(means.valueMm() - intendedMm, means.budget());
  }

  private BoreSection top() {
    return sections.get(0);
  }

  private BoreSection bottom() {
    return sections.get(sections.size() - 1);
  }
}
