package boreledger.station.results;

import boreledger.calc.bore.ThermalUncertainty;
import boreledger.calc.gapping.GapLimits;
import boreledger.calc.gapping.GapTarget;
import boreledger.calc.gapping.OilRail;
import boreledger.calc.gapping.RingState;
import boreledger.calc.gapping.RingVerdict;
import boreledger.calc.gapping.TargetFit;
import boreledger.calc.ring.GapPoint;
import boreledger.calc.ring.GappedRing;
import boreledger.calc.ring.RingTravel;
import boreledger.calc.ring.Travel;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.job.Ring;
import boreledger.station.job.RingKind;
import boreledger.station.results.RingResults.TargetResult;
import boreledger.station.results.RingResults.TightestResult;
import java.util.List;
import java.util.Optional;

/**
 * Holds a ring's gap along its travel against what it should be.
 *
 * @param target what it should be; empty for a ring that is only verified
 * @param heat the running engine's temperatures
 * @param boosted whether the engine is boosted beyond what its maker meant
 */
record RingGapping(
    Ring ring, Optional<GapTarget> target, Heat heat, boolean boosted, ThermalUncertainty thermal) {

  /** What can be told before any gap was read in a gauged bore. */
  GappingResult unknown() {
    Optional<GapTarget> wanted = filed();
    return new GappingResult(
        null,
        wanted.map(each -> each.notBelowMinimum(limits()).targetMm()).orElse(null),
        wanted.map(each -> origin(each.notBelowMinimum(limits()))).orElse(null),
        null,
        RingState.UNKNOWN,
        false,
        List.of());
  }

  /** What is to be done about a ring with at least one gap read. */
  GappingResult of(GappedRing gapped) {
    RingTravel travel = travel(gapped);
    TightestResult tightest = tightest(travel);
    return filed()
        .map(wanted -> filed(RingVerdict.of(travel, wanted, limits()), tightest))
        .orElseGet(() -> verified(OilRail.verify(travel, limits(), boosted), tightest));
  }

  /** The ring along its travel. */
  RingTravel travel(GappedRing gapped) {
    return new RingTravel(gapped, new Travel(ring.travelTopMm(), ring.travelBottomMm()), thermal);
  }

  private GappingResult filed(RingVerdict verdict, TightestResult tightest) {
    GapTarget wanted = verdict.target();
    return new GappingResult(
        tightest,
        wanted.targetMm(),
        origin(wanted),
        verdict.removeMm(),
        verdict.state(),
        verdict.state() == RingState.TOO_WIDE
            || !(verdict.fit() instanceof TargetFit.Fits)
            || dangerous(tightest),
        new RingCautions(ring).of(tightest, verdict, heat));
  }

  private GappingResult verified(OilRail rail, TightestResult tightest) {
    return new GappingResult(
        tightest,
        null,
        null,
        null,
        rail.state(),
        rail.state() != RingState.READY || dangerous(tightest),
        new RingCautions(ring).of(tightest, rail, boosted, heat));
  }

  /** A gap that breaks rings and pistons, whatever else is true of it. */
  private boolean dangerous(TightestResult tightest) {
    return tightest.hotGapMm() <= 0 || tightest.gapMm() < ring.gapMinMm();
  }

  private TightestResult tightest(RingTravel travel) {
    GapPoint cold = travel.tightestCold();
    GapPoint hot = travel.tightestHot(heat.running());
    Estimate gap = travel.coldAt(cold.depthMm());
    return new TightestResult(
        cold.depthMm(),
        cold.gapMm(),
        gap.expandedUncertaintyMm(),
        hot.gapMm(),
        hot.depthMm(),
        heat.origin(),
        travel.coldGapForMm(heat.marginMm(), heat.running()),
        cold.cautiousGapMm(),
        cold.reach().beyondReadings(),
        BudgetLine.of(gap.budget()));
  }

  /** The target of a ring that is filed. An oil rail is not, whatever the job wants it to be. */
  Optional<GapTarget> filed() {
    return ring.kind() == RingKind.OIL ? Optional.empty() : target;
  }

  private GapLimits limits() {
    return new GapLimits(ring.gapMinMm(), ring.gapMaxMm());
  }

  private static TargetResult origin(GapTarget target) {
    GapTarget.Raise raise = target.raise();
    return new TargetResult(
        target.factor(),
        target.origin(),
        raise == null ? null : raise.fromMm(),
        raise == null ? null : RingCautions.words(raise.to()));
  }
}
