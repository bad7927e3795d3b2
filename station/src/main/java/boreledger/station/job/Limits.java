package boreledger.station.job;

import java.util.List;

/**
 * Limits from the engine maker's service data, in millimetres. Each is null when the job leaves it
 * out.
 *
 * @param oversizesMm added to the nominal bore, smallest first; may be empty
 */
public record Limits(
    Double boreMinMm,
    Double boreMaxMm,
    Double wearLimitMm,
    Double taperMaxMm,
    Double outOfRoundMaxMm,
    List<Double> oversizesMm,
    Double honingAllowanceMm,
    Double clearanceMinMm,
    Double clearanceMaxMm) {
  /** Takes a copy of the list. */
  public Limits {
    oversizesMm = List.copyOf(oversizesMm);
  }
}
