package boreledger.calc.ring;

import boreledger.calc.bore.Perimeter;

/** A gap reading with the bore's perimeter at its depth and the ring's length that follows. */
record PlacedGap(GapReading reading, Perimeter perimeter, double developedLengthMm) {
  double atReferenceMm() {
    return perimeter.lengthMm() - developedLengthMm;
  }

  /** The weight of the length that follows from it, one over the variance. */
  double weightPerMm2() {
    double boreMm = perimeter.budget().combinedMm();
    double gapMm = reading.budget().combinedMm();
    return 1 / (boreMm * boreMm + gapMm * gapMm);
  }
}
