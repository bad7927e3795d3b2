package boreledger.drivers.pick;

import boreledger.calc.rock.RockEstimate;
import boreledger.calc.rock.RockEstimator;
import boreledger.calc.rock.RockSample;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import java.util.List;

/**
 * What the samples of one rocked reading give.
 *
 * <p>Wild samples, those more than 1 mm below the lowest level or further above it than leaving the
 * bore would be, stay with the reading but are not asked for its value. Smaller glitches are the
 * estimator's to reject.
 */
final class RockPick {
  private static final double WILD_BELOW_MM = 1.0;

  private final PickSpec.Rock spec;
  private final double resolutionMm;
  private final Estimation estimation;

  RockPick(PickSpec.Rock spec, double resolutionMm) {
    this(spec, resolutionMm, RockEstimator::estimate);
  }

  RockPick(PickSpec.Rock spec, double resolutionMm, Estimation estimation) {
    this.spec = spec;
    this.resolutionMm = resolutionMm;
    this.estimation = estimation;
  }

  /** The computation behind it, as {@link RockEstimator#estimate} does it. */
  @FunctionalInterface
  interface Estimation {
    RockEstimate of(List<RockSample> samples, double resolutionMm, int minRocks);
  }

  PickEvent of(List<Sample> samples) {
    double floorMm = Levels.of(MedianOfThree.of(samples)).floorMm();
    List<RockSample> asked =
        samples.stream()
            .filter(s -> s.valueMm() >= floorMm - WILD_BELOW_MM)
            .filter(s -> s.valueMm() <= floorMm + spec.leavesAboveMm())
            .map(s -> new RockSample(s.tS(), s.valueMm()))
            .toList();
    RockEstimate estimate = estimation.of(asked, resolutionMm, spec.minRocks());
    if (estimate instanceof RockEstimate.Found found) {
      return new PickEvent.Picked(
          found.tS(), found.valueMm(), found.standardUncertaintyMm(), samples, List.of());
    }
    String why = ((RockEstimate.NotEnough) estimate).why();
    return new PickEvent.NotPicked(samples.get(samples.size() - 1).tS(), samples, why);
  }
}
