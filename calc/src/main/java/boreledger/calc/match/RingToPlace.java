package boreledger.calc.match;

import boreledger.calc.input.Require;

/**
 * A ring that is to go in one of several bores.
 *
 * @param name what it is called
 * @param lengthMm the length along the closed ring, from end to end, at 20 degrees Celsius, in
 *     millimetres; above zero
 */
public record RingToPlace(String name, double lengthMm) {
  /** Checks the length. */
  public RingToPlace {
    Require.positive("length of ring " + name, lengthMm, "mm");
    Picometres.of("length of ring " + name, lengthMm);
  }

  /**
   * A ring whose gap was read in a bore of known perimeter.
   *
   * @param gapMm the gap there; zero or more
   * @param inPerimeterMm the bore's perimeter there; longer than the gap
   */
  public static RingToPlace gapped(String name, double gapMm, double inPerimeterMm) {
    Require.notNegative("gap of ring " + name, gapMm, "mm");
    Require.positive("perimeter around ring " + name, inPerimeterMm, "mm");
    long length =
        Picometres.of("perimeter around ring " + name, inPerimeterMm)
            - Picometres.of("gap of ring " + name, gapMm);
    return new RingToPlace(name, Picometres.toMm(length));
  }

  long lengthPm() {
    return Picometres.of("length of ring " + name, lengthMm);
  }
}
