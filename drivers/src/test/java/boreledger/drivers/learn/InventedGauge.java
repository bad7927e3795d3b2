package boreledger.drivers.learn;

import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;

/**
 * A gauge that exists only here.
 *
 * @param stepMm its step in millimetres
 * @param stepIn its step in inches; null when it has no inch display
 * @param leastMm the least value that it can show
 * @param mostMm the largest value that it can show
 * @param chunks how its line hands out a frame
 * @param joinedLate whether the first bytes heard are the tail of a frame
 */
record InventedGauge(
    String name,
    BigDecimal stepMm,
    BigDecimal stepIn,
    BigDecimal leastMm,
    BigDecimal mostMm,
    Chunking chunks,
    boolean joinedLate,
    Wire wire) {
  private static final Set<Integer> ROUND_STEPS = Set.of(1, 2, 5);

  /** How a line hands out a frame. */
  enum Chunking {
    WHOLE,
    HALVES,
    CRUMBS
  }

  /** A gauge of 12.7 mm either way, heard whole. */
  static InventedGauge of(String name, String stepMm, Wire wire) {
    return new InventedGauge(
        name,
        new BigDecimal(stepMm),
        null,
        new BigDecimal("-12.7"),
        new BigDecimal("12.7"),
        Chunking.WHOLE,
        false,
        wire);
  }

  InventedGauge withInch(String step) {
    return new InventedGauge(
        name, stepMm, new BigDecimal(step), leastMm, mostMm, chunks, joinedLate, wire);
  }

  InventedGauge between(String least, String most) {
    return new InventedGauge(
        name,
        stepMm,
        stepIn,
        new BigDecimal(least),
        new BigDecimal(most),
        chunks,
        joinedLate,
        wire);
  }

  InventedGauge in(Chunking chunking) {
    return new InventedGauge(name, stepMm, stepIn, leastMm, mostMm, chunking, joinedLate, wire);
  }

  InventedGauge heardLate() {
    return new InventedGauge(name, stepMm, stepIn, leastMm, mostMm, chunks, true, wire);
  }

  /** Set to a value as nearly as the gauge can; in millimetres when it has no inch display. */
  Reading set(BigDecimal wantedMm, LengthUnit wantedUnit) {
    BigDecimal inRangeMm = wantedMm.max(leastMm).min(mostMm);
    boolean inch = wantedUnit == LengthUnit.IN && stepIn != null;
    BigDecimal step = inch ? stepIn : stepMm;
    LengthUnit unit = inch ? LengthUnit.IN : LengthUnit.MM;
    BigDecimal stepInMm = unit.toMm(step);
    long counts = inRangeMm.divide(stepInMm, 0, RoundingMode.HALF_EVEN).longValueExact();
    return new Reading(counts, step, unit, 0, 0);
  }

  /** What a person reads off its display, as millimetres: three decimals of an odd step. */
  static BigDecimal displayedMm(Reading reading) {
    boolean asIs = ROUND_STEPS.contains(reading.step().unscaledValue().intValue());
    BigDecimal number = reading.number();
    BigDecimal displayed = asIs ? number : number.setScale(3, RoundingMode.HALF_EVEN);
    return reading.unit().toMm(displayed);
  }

  @Override
  public String toString() {
    return name;
  }
}
