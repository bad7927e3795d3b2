package boreledger.station.truth;

import java.util.Locale;

/** The two directions in which a bore is gauged, at a right angle to each other. */
public enum Axis {
  THRUST(0.0),
  PIN(90.0);

  private final double directionDeg;

  Axis(double directionDeg) {
    this.directionDeg = directionDeg;
  }

  /** Clock direction in the bore, seen from the deck, in degrees from the thrust axis. */
  public double directionDeg() {
    return directionDeg;
  }

  /** The word that job files and answers use. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
