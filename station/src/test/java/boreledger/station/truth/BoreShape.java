package boreledger.station.truth;

/** A bore at 20 °C: its diameter at any depth below the deck and in any direction. */
@FunctionalInterface
public interface BoreShape {

  /**
   * The diameter that a two-point gauge meets.
   *
   * @param depthMm below the deck
   * @param directionDeg from the thrust axis
   */
  double diameterMm(double depthMm, double directionDeg);

  /** The diameter on one of the two gauged axes. */
  default double diameterMm(double depthMm, Axis axis) {
    return diameterMm(depthMm, axis.directionDeg());
  }

  /** Perimeter of the ellipse on the two axes at this depth. */
  default double perimeterMm(double depthMm) {
    return EllipsePerimeter.ofDiametersMm(
        diameterMm(depthMm, Axis.THRUST), diameterMm(depthMm, Axis.PIN));
  }

  /** Both shapes on top of each other. */
  default BoreShape plus(BoreShape other) {
    return (depthMm, directionDeg) ->
        diameterMm(depthMm, directionDeg) + other.diameterMm(depthMm, directionDeg);
  }

  /** The same diameter everywhere. */
  static BoreShape cylinder(double diameterMm) {
    return (depthMm, directionDeg) -> diameterMm;
  }

  /** Round at each depth; the diameter runs straight between the named depths. */
  static BoreShape round(double[] depthsMm, double[] diametersMm) {
    Polyline line = new Polyline(depthsMm, diametersMm);
    return (depthMm, directionDeg) -> line.at(depthMm);
  }

  /**
   * What an oval adds: largest minus smallest diameter, running straight between the depths.
   *
   * @param towardsDeg direction of the largest diameter
   */
  static BoreShape oval(double[] depthsMm, double[] amountsMm, double towardsDeg) {
    Polyline amount = new Polyline(depthsMm, amountsMm);
    return (depthMm, directionDeg) ->
        amount.at(depthMm)
            / 2
            * StrictMath.cos(2 * StrictMath.toRadians(directionDeg - towardsDeg));
  }
}
