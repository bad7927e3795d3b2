package boreledger.calc.oversize;

import boreledger.calc.input.Require;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Hone or oversize for a whole engine; all its cylinders go to the same oversize.
 *
 * @param cure what to do
 * @param oversizeMm the smallest oversize that cleans every cylinder when each cut follows its worn
 *     bore, whether or not honing would do; null when none does
 * @param oversizeOnOriginalCentreMm the same when every cylinder is cut on its original centre and
 *     worn on one side only; null when none does
 * @param largestListed whether the oversize is the largest listed: compare the remaining wall with
 *     the maker's data first
 * @param cylinders what each cylinder needs by itself, and why
 */
public record EngineAdvice(
    Cure cure,
    Double oversizeMm,
    Double oversizeOnOriginalCentreMm,
    boolean largestListed,
    List<CylinderAdvice> cylinders) {
  /** Takes a copy of the list. */
  public EngineAdvice {
    cylinders = List.copyOf(cylinders);
  }

  /**
   * Advises on an engine.
   *
   * @param cylinders one or more
   * @param oversizes what pistons are made for
   * @param limits what a honed bore must keep; what is not known bars nothing
   */
  public static EngineAdvice of(
      List<WornCylinder> cylinders, Oversizes oversizes, HoningLimits limits) {
    Require.atLeast(1, cylinders.size(), "cylinders");
    Optional<Double> oversize = forAll(cylinders, oversizes, WornCylinder::neededOnWornCentreMm);
    Optional<Double> onOriginal =
        forAll(cylinders, oversizes, WornCylinder::neededOnOriginalCentreMm);
    double allowanceMm = oversizes.honingAllowanceMm();
    boolean honed =
        cylinders.stream().allMatch(each -> Honing.of(each, allowanceMm, limits).enough());
    Cure bored = oversize.isPresent() ? Cure.OVERSIZE : Cure.SLEEVE_OR_BLOCK;
    Cure cure = honed ? Cure.HONE : bored;
    Finish finish =
        new Finish(oversizes, limits, cure, oversize.map(oversizes::finishedMm).orElse(null));
    return new EngineAdvice(
        cure,
        oversize.orElse(null),
        onOriginal.orElse(null),
        oversize.filter(oversizes::isLargest).isPresent(),
        cylinders.stream().map(finish::advice).toList());
  }

  private static Optional<Double> forAll(
      List<WornCylinder> cylinders, Oversizes oversizes, ToDoubleFunction<WornCylinder> needed) {
    return oversizes.smallestFor(cylinders.stream().mapToDouble(needed).max().orElseThrow());
  }

  private record Finish(
      Oversizes oversizes, HoningLimits limits, Cure cure, Double oversizeFinishedMm) {
    CylinderAdvice advice(WornCylinder cylinder) {
      Honing honing = Honing.of(cylinder, oversizes.honingAllowanceMm(), limits);
      Optional<Double> finishedMm =
          cure == Cure.HONE
              ? Optional.of(honing.finishedMm())
              : Optional.ofNullable(oversizeFinishedMm);
      Optional<Double> pistonMm = Optional.ofNullable(cylinder.pistonMm());
      return new CylinderAdvice(
          cylinder,
          honing,
          oversizes.smallestFor(cylinder.neededOnWornCentreMm()).orElse(null),
          oversizes.smallestFor(cylinder.neededOnOriginalCentreMm()).orElse(null),
          finishedMm.orElse(null),
          finishedMm.flatMap(bore -> pistonMm.map(piston -> bore - piston)).orElse(null));
    }
  }
}
