package boreledger.station.results;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.BoreSection;
import boreledger.calc.bore.BoreShape;
import boreledger.calc.bore.Diameter;
import boreledger.calc.bore.IntendedProfile;
import boreledger.calc.bore.Taper;
import boreledger.calc.bore.WearLine;
import boreledger.calc.uncertainty.Estimate;
import boreledger.station.job.GaugingOrder;
import boreledger.station.job.Job;
import boreledger.station.job.Piston;
import boreledger.station.results.BoreResults.ClearanceResult;
import boreledger.station.results.BoreResults.OutOfRoundResult;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.results.BoreResults.WearLineResult;
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
record CylinderBore(Job job, int cylinder, List<Diameter> diameters) {
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

  /** The whole profile; empty as long as a planned position lacks its reading. */
  Optional<BoreProfile> complete() {
    GaugingOrder plan = job.plan();
    boolean all = diameters.size() == plan.depthsMm().size() * plan.axes().size();
    return all ? profile() : Optional.empty();
  }

  BoreResults results() {
    return new BoreResults(
        positions(),
        tapersMm(Taper::amount),
        tapersMm(Taper::signed),
        outOfRound(),
        complete()
            .flatMap(each -> BoreShape.of(each, intended()))
            .map(BoreShape::word)
            .orElse(null),
        complete().flatMap(each -> WearLine.of(each, intended())).map(this::wearLine).orElse(null),
        clearance(),
        new BoreChecks(job.limits(), profile(), pistonMm(), complete().isPresent()).results());
  }

  /** The cylinder's piston; null when it was not measured. */
  Double pistonMm() {
    return job.pistons().stream()
        .filter(piston -> piston.cylinder() == cylinder)
        .map(Piston::diameterMm)
        .findFirst()
        .orElse(null);
  }

  private WearLineResult wearLine(WearLine line) {
    return new WearLineResult(line.slope(), line.slopeStandardUncertainty());
  }

  private ClearanceResult clearance() {
    return profile()
        .filter(bore -> pistonMm() != null)
        .map(
            bore ->
                new ClearanceResult(
                    bore.smallest().diameterMm() - pistonMm(),
                    bore.largest().diameterMm() - pistonMm()))
        .orElse(null);
  }

  /** The choke says how much narrower a place is meant to be than the widest. */
  private IntendedProfile intended() {
    GaugingOrder plan = job.plan();
    if (plan.chokeMm() == null) {
      return IntendedProfile.STRAIGHT;
    }
    Map<Double, Double> offsetMm = new LinkedHashMap<>();
    for (int i = 0; i < plan.depthsMm().size(); i++) {
      offsetMm.put(plan.depthsMm().get(i), -plan.chokeMm().get(i));
    }
    return new IntendedProfile(offsetMm);
  }

  private Optional<BoreProfile> profile() {
    return diameters.isEmpty() ? Optional.empty() : Optional.of(BoreProfile.of(diameters));
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
                size.map(Estimate::expandedUncertaintyMm).orElse(null),
                size.map(Estimate::budget).map(BudgetLine::of).orElse(null)));
      }
    }
    return positions;
  }

  private Map<String, Double> tapersMm(Function<Taper, Estimate> which) {
    Map<String, Double> tapersMm = new LinkedHashMap<>();
    for (String axis : job.plan().axes()) {
      Optional<Double> taperMm =
          profile()
              .flatMap(profile -> profile.taper(axis))
              .map(taper -> which.apply(taper).valueMm());
      tapersMm.put(axis, taperMm.or(this::zeroWithASingleDepth).orElse(null));
    }
    return tapersMm;
  }

  /** Largest less smallest of a single diameter is 0, whatever it is worth. */
  private Optional<Double> zeroWithASingleDepth() {
    return complete().filter(profile -> profile.sections().size() == 1).map(profile -> 0.0);
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
}
