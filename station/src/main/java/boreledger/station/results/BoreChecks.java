package boreledger.station.results;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.Diameter;
import boreledger.calc.bore.Taper;
import boreledger.calc.decision.Limit;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.job.Limits;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A bore held against the job's limits.
 *
 * @param profile as far as it was read; empty when nothing was
 * @param pistonMm the piston's diameter; null when it was not measured
 * @param complete whether every planned position is in the profile
 */
record BoreChecks(Limits limits, Optional<BoreProfile> profile, Double pistonMm, boolean complete) {
  /** One result for each limit that the job gives and that something was read for. */
  List<CheckResult> results() {
    return Stream.of(
            upper("taper", limits.taperMaxMm(), bore -> bore.largestTaper().map(Taper::amount)),
            upper("out-of-round", limits.outOfRoundMaxMm(), BoreProfile::largestOutOfRound),
            lower("bore-min", limits.boreMinMm(), bore -> Optional.of(bore.smallest().size())),
            upper("bore-max", limits.boreMaxMm(), bore -> Optional.of(bore.largest().size())),
            upper("wear-limit", limits.wearLimitMm(), bore -> Optional.of(bore.largest().size())),
            lower("clearance-min", limits.clearanceMinMm(), bore -> clearance(bore.smallest())),
            upper("clearance-max", limits.clearanceMaxMm(), bore -> clearance(bore.largest())))
        .flatMap(Optional::stream)
        .toList();
  }

  private Optional<Estimate> clearance(Diameter bore) {
    return Optional.ofNullable(pistonMm)
        .map(piston -> new Estimate(bore.diameterMm() - piston, bore.budget()));
  }

  private Optional<CheckResult> upper(
      String name, Double limitMm, Function<BoreProfile, Optional<Estimate>> value) {
    return check(name, limitMm, Limit.Upper::new, value);
  }

  private Optional<CheckResult> lower(
      String name, Double limitMm, Function<BoreProfile, Optional<Estimate>> value) {
    return check(name, limitMm, Limit.Lower::new, value);
  }

  private Optional<CheckResult> check(
      String name,
      Double limitMm,
      DoubleFunction<Limit> limit,
      Function<BoreProfile, Optional<Estimate>> value) {
    if (limitMm == null) {
      return Optional.empty();
    }
    return profile
        .flatMap(value)
        .map(each -> CheckResult.of(name, each, limit.apply(limitMm), limitMm, complete));
  }
}
