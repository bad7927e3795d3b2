package boreledger.station.truth;

/** A gauge's zero that walks evenly from one value to another during a session. */
public record Drift(double startMm, double endMm, double lengthS) {

  double atMm(double tS) {
    return startMm + (endMm - startMm) * tS / lengthS;
  }
}
