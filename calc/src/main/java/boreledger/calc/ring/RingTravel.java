package boreledger.calc.ring;

import boreledger.calc.bore.Perimeter;
import boreledger.calc.bore.Reach;
import boreledger.calc.bore.ReferenceTemperature;
import boreledger.calc.bore.ThermalUncertainty;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * A ring's gap along its travel, cold at 20 degrees Celsius and hot.
 *
 * <p>The perimeter is straight between gauged depths and so is the wall's temperature; the product
 * of two positive straight lines has its smallest value at an end of the piece, so gauged depths
 * and the ends of the travel are all that need be looked at. Of equal points a gauged one is
 * preferred.
 *
 * @param gapped the ring in its bore, with one gap reading or more
 * @param travel where it runs
 * @param thermal how well temperatures and coefficients are known
 */
public record RingTravel(GappedRing gapped, Travel travel, ThermalUncertainty thermal) {
  private static final Comparator<GapPoint> GAUGED_FIRST =
      Comparator.comparing(point -> point.reach() != Reach.GAUGED);

  /**
   * Checks that there is a gap reading.
   *
   * @throws ImpossibleInput when there is none
   */
  public RingTravel {
    Require.atLeast(1, gapped.gaps().size(), "gap readings");
  }

  /** The ring's length at 20 degrees Celsius, from all gap readings, in millimetres. */
  public double developedLengthMm() {
    return RingLength.of(gapped.placed()).lengthMm();
  }

  /** The gaps at 20 degrees Celsius at the ends of the travel and the gauged depths between. */
  public List<GapPoint> cold() {
    double lengthMm = developedLengthMm();
    return perimeters().map(each -> coldPoint(each, lengthMm)).toList();
  }

  /** The gaps of the running engine at the same depths. */
  public List<GapPoint> hot(RunningTemperatures running) {
    double lengthMm = developedLengthMm();
    return perimeters().map(each -> hotPoint(each, lengthMm, running)).toList();
  }

  /** Where the cold gap is smallest. */
  public GapPoint tightestCold() {
    return cold().stream().min(by(GapPoint::gapMm)).orElseThrow();
  }

  /** Where the cold gap is widest. */
  public GapPoint widestCold() {
    Comparator<GapPoint> falling = Comparator.comparingDouble(point -> -point.gapMm());
    return cold().stream().min(falling.thenComparing(GAUGED_FIRST)).orElseThrow();
  }

  /** Where the hot gap is smallest. */
  public GapPoint tightestHot(RunningTemperatures running) {
    return hot(running).stream().min(by(GapPoint::gapMm)).orElseThrow();
  }

  /** The cold gap at a depth with its budget; what bore and gap readings share has left it. */
  public Estimate coldAt(double depthMm) {
    Perimeter there = gapped.bore().perimeterAt(depthMm);
    RingLength length = RingLength.of(gapped.placed());
    Budget budget =
        length.budgetAt(there, gapped.ring()).with(expansion(there)).with(temperature(there));
    return new Estimate(there.lengthMm() - length.lengthMm(), budget);
  }

  /** The hot gap at a depth of the travel, in millimetres. */
  public GapPoint hotAt(double depthMm, RunningTemperatures running) {
    return hotPoint(gapped.bore().perimeterAt(depthMm), developedLengthMm(), running);
  }

  /**
   * The gap at 20 degrees Celsius, where it is tightest cold, that leaves a hot gap where it is
   * tightest hot, in millimetres.
   *
   * @param hotGapMm the hot gap wanted; 0 for ends that just touch
   */
  public double coldGapForMm(double hotGapMm, RunningTemperatures running) {
    Require.finite("hot gap", hotGapMm, "mm");
    double longestMm =
        perimeters()
            .mapToDouble(each -> longestRingMm(each, hotGapMm, running))
            .min()
            .orElseThrow();
    double tightestMm = perimeters().mapToDouble(Perimeter::lengthMm).min().orElseThrow();
    return tightestMm - longestMm;
  }

  private double longestRingMm(Perimeter there, double hotGapMm, RunningTemperatures running) {
    return expansion()
        .ringLengthForMm(
            there.lengthMm(),
            hotGapMm,
            running.wallTempC(travel, there.depthMm()),
            running.ringTempC());
  }

  private Stream<Perimeter> perimeters() {
    DoubleStream gauged =
        gapped.bore().sections().stream()
            .mapToDouble(section -> section.depthMm())
            .filter(travel::holds);
    return DoubleStream.concat(DoubleStream.of(travel.topMm(), travel.bottomMm()), gauged)
        .sorted()
        .distinct()
        .mapToObj(gapped.bore()::perimeterAt);
  }

  private GapPoint coldPoint(Perimeter there, double lengthMm) {
    return new GapPoint(
        there.depthMm(), there.lengthMm() - lengthMm, there.cautiousMm() - lengthMm, there.reach());
  }

  private GapPoint hotPoint(Perimeter there, double lengthMm, RunningTemperatures running) {
    double wallTempC = running.wallTempC(travel, there.depthMm());
    double ringTempC = running.ringTempC();
    return new GapPoint(
        there.depthMm(),
        expansion().hotGapMm(there.lengthMm(), lengthMm, wallTempC, ringTempC),
        expansion().hotGapMm(there.cautiousMm(), lengthMm, wallTempC, ringTempC),
        there.reach());
  }

  private FreeExpansion expansion() {
    return new FreeExpansion(gapped.boreCtePerK(), gapped.ring().ctePerK());
  }

  /** Both coefficients bring the reading to 20 degrees, independently of each other. */
  private Component expansion(Perimeter there) {
    double farthestK =
        gapped.gaps().stream()
            .mapToDouble(gap -> Math.abs(gap.tempC() - ReferenceTemperature.C))
            .max()
            .orElseThrow();
    return Component.typeB(
        "expansion coefficients of bore and ring",
        Math.sqrt(2) * there.lengthMm() * thermal.ctePerK() * farthestK);
  }

  private Component temperature(Perimeter there) {
    double differencePerK = Math.abs(gapped.boreCtePerK() - gapped.ring().ctePerK());
    return Component.typeB(
        "temperature of bore and ring", there.lengthMm() * differencePerK * thermal.temperatureK());
  }

  private static Comparator<GapPoint> by(ToDoubleFunction<GapPoint> gap) {
    return Comparator.comparingDouble(gap).thenComparing(GAUGED_FIRST);
  }
}
