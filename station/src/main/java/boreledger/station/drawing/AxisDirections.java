package boreledger.station.drawing;

import java.util.List;

/**
 * Where gauging axes lie, looking down on the deck with the crankshaft from left to right: evenly
 * spaced, the thrust axis across the crankshaft, the pin axis along it; where neither is named, the
 * first one lies across.
 */
final class AxisDirections {
  private static final double HALF_TURN_DEG = 180;
  private static final double ACROSS_DEG = 90;

  private AxisDirections() {}

  /** The direction of the axis with an index, in degrees from the crankshaft, 0 up to 180. */
  static double deg(List<String> axes, int index) {
    double stepDeg = HALF_TURN_DEG / axes.size();
    double firstDeg = ACROSS_DEG;
    if (axes.contains("thrust")) {
      firstDeg = ACROSS_DEG - axes.indexOf("thrust") * stepDeg;
    } else if (axes.contains("pin")) {
      firstDeg = -axes.indexOf("pin") * stepDeg;
    }
    double deg = (firstDeg + index * stepDeg) % HALF_TURN_DEG;
    return deg < 0 ? deg + HALF_TURN_DEG : deg;
  }
}
