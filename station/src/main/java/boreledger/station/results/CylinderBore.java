package boreledger.station.results;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.BoreSection;
import boreledger.calc.bore.Diameter;
import boreledger.calc.bore.Taper;
import boreledger.calc.decision.Limit;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.job.GaugingOrder;
import boreledger.station.job.Job;
import boreledger.station.job.Limits;
import boreledger.station.results.BoreResults.OutOfRoundResult;
import boreledger.station.results.BoreResults.PositionResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One cylinder's bore as far as it was read.
 *
 * @param diameters from the deck down and in the plan's order of axes; may be empty
 */
record CylinderBore(Job job, List<Diameter> diameters) {
  CylinderBore {
    diameters = List.copyOf(diameters);
  }

  /** The depths where every axis was read: only there is the perimeter known. */
  Optional<BoreProfile> wholeSections() {
    int axes = job.plan().axes().size();
    return profile()
        .map(BoreProfile::sections)
        .map(all -> all.stream().filter(each -> each.diameters().size() == axes).toList())
        .filter(whole -> !whole.isEmpty())
        .map(BoreProfile::new);
  }

  BoreResults results() {
    return new BoreResults(positions(), tapersMm(), outOfRound(), null, checks());
  }

  private Optional<BoreProfile> profile() {
    return diameters.isEmpty() ? Optional.empty() : Optional.of(BoreProfile.of(diameters));
  }

  private boolean complete() {
    GaugingOrder plan = job.plan();
    return diameters.size() == plan.depthsMm().size() * plan.axes().size();
  }

  private List<PositionResult> positions() {
    List<PositionResult> positions = new ArrayList<>();
    for (double depthMm : job.plan().depthsMm()) {
      for (String axis : job.plan().axes()) {
        Optional<Estimate> size =
            diameters.stream()
                .filter(each -> each.depthMm() == depthMm && each.axis().equals(axis))
                .findFirst()
                .map(Diameter::size);
        positions.add(
            new PositionResult(
                depthMm,
                axis,
                size.map(Estimate::valueMm).orElse(null),
                size.map(Estimate::expandedUncertaintyMm).orElse(null)));
      }
    }
    return positions;
  }

  private Map<String, Double> tapersMm() {
    Map<String, Double> tapersMm = new LinkedHashMap<>();
    for (String axis : job.plan().axes()) {
      tapersMm.put(
          axis,
          profile()
              .flatMap(profile -> profile.taper(axis))
              .map(taper -> taper.amount().valueMm())
              .orElse(null));
    }
    return tapersMm;
  }

  private List<OutOfRoundResult> outOfRound() {
    List<OutOfRoundResult> all = new ArrayList<>();
    for (double depthMm : job.plan().depthsMm()) {
      Optional<Estimate> estimate =
          wholeSections()
              .flatMap(whole -> sectionAt(whole, depthMm))
              .flatMap(BoreSection::outOfRound);
      all.add(
          new OutOfRoundResult(
              depthMm,
              estimate.map(Estimate::valueMm).orElse(null),
              estimate.map(Estimate::expandedUncertaintyMm).orElse(null)));
    }
    return all;
  }

  private static Optional<BoreSection> sectionAt(BoreProfile profile, double depthMm) {
    return profile.sections().stream().filter(each -> each.depthMm() == depthMm).findFirst();
  }

  private List<CheckResult> checks() {
    Limits limits = job.limits();
    List<CheckResult> checks = new ArrayList<>();
    upper("taper", limits.taperMaxMm(), p -> p.largestTaper().map(Taper::amount))
        .ifPresent(checks::add);
    upper("out-of-round", limits.outOfRoundMaxMm(), BoreProfile::largestOutOfRound)
        .ifPresent(checks::add);
    check("bore-min", limits.boreMinMm(), Limit.Lower::new, p -> Optional.of(p.smallest().size()))
        .ifPresent(checks::add);
    upper("bore-max", limits.boreMaxMm(), p -> Optional.of(p.largest().size()))
        .ifPresent(checks::add);
    upper("wear-limit", limits.wearLimitMm(), p -> Optional.of(p.largest().size()))
        .ifPresent(checks::add);
    return checks;
  }

  private Optional<CheckResult> upper(
      String name, Double limitMm, Function<BoreProfile, Optional<Estimate>> value) {
    return check(name, limitMm, Limit.Upper::new, value);
  }

  private Optional<CheckResult> check(
      String name,
      Double limitMm,
      Function<Double, Limit> limit,
      Function<BoreProfile, Optional<Estimate>> value) {
    if (limitMm == null) {
      return Optional.empty();
    }
    return profile()
        .flatMap(value)
        .map(each -> CheckResult.of(name, each, limit.apply(limitMm), limitMm, complete()));
  }
}
