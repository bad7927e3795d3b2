package boreledger.calc.match;

/**
 * A ring in a bore.
 *
 * @param ring the ring
 * @param bore the bore
 * @param gapMm its gap before filing in millimetres; below zero when the ends overlap
 * @param removeMm what is to be filed off to reach the bore's target; zero or more
 * @param allowed whether the gap is not above the bore's largest: a gap cannot be filed smaller
 */
public record Placing(
    RingToPlace ring, BoreToFill bore, double gapMm, double removeMm, boolean allowed) {

  /** A ring tried in a bore. */
  public static Placing of(RingToPlace ring, BoreToFill bore) {
    long gapPm = bore.perimeterPm() - ring.lengthPm();
    return new Placing(
        ring,
        bore,
        Picometres.toMm(gapPm),
        Picometres.toMm(Math.max(0, bore.targetPm() - gapPm)),
        bore.allowsPm(gapPm));
  }

  long removePm() {
    return Math.max(0, shortOfTargetPm());
  }

  long excessPm() {
    return Math.max(0, -shortOfTargetPm());
  }

  long aboveMaxPm() {
    return gapPm() - Picometres.of("largest gap", bore.maxMm());
  }

  long gapPm() {
    return bore.perimeterPm() - ring.lengthPm();
  }

  private long shortOfTargetPm() {
    return bore.targetPm() - gapPm();
  }
}
