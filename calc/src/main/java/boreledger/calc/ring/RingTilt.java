package boreledger.calc.ring;

import boreledger.calc.geometry.Ellipse;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * A ring that does not lie square in its bore, so that its gap reads too wide.
 *
 * <p>The plane {@code z = c + x p + y q} through the depths at the clock positions, least squares,
 * tilts by {@code tan t = sqrt(p^2 + q^2)}; it cuts the bore in an ellipse with half axes R and
 * {@code R / cos t}, and the gap reads too wide by that ellipse's perimeter less the circle's.
 *
 * <ul>
 *   <li>Three positions: the plane goes through all three.
 *   <li>Equal depths: no tilt, no error.
 *   <li>Positions nearer to each other than one degree count as one.
 * </ul>
 *
 * @param boreMm the bore in millimetres; above zero
 * @param tangent of the tilt; zero or more
 */
public record RingTilt(double boreMm, double tangent) {
  private static final int POSITIONS = 3;
  private static final double APART_DEG = 1;

  /** Checks both numbers. */
  public RingTilt {
    Require.positive("bore", boreMm, "mm");
    Require.notNegative("tangent of the tilt", tangent, "");
  }

  /**
   * The tilt from depths at clock positions.
   *
   * @param boreMm the bore in millimetres; above zero
   * @param depths at three or more different clock positions
   * @throws ImpossibleInput when fewer than three positions are a degree or more apart
   */
  public static RingTilt of(double boreMm, List<ClockDepth> depths) {
    Require.positive("bore", boreMm, "mm");
    int different = differentPositions(depths);
    if (different < POSITIONS) {
      throw new ImpossibleInput(
          different
              + " different clock positions given, at least 3 needed, a degree or more apart");
    }
    return new RingTilt(boreMm, LeastSquaresPlane.steepestSlope(boreMm / 2, depths));
  }

  /** The tilt in degrees. */
  public double tiltDeg() {
    return Math.toDegrees(Math.atan(tangent));
  }

  /** How much too wide the gap reads, in millimetres; zero or more. */
  public double gapErrorMm() {
    return Ellipse.tiltedCutExcessMm(boreMm, tangent);
  }

  /** How much deeper the lowest edge lies than the highest, in millimetres. */
  public double edgeDifferenceMm() {
    return boreMm * tangent;
  }

  private static int differentPositions(List<ClockDepth> depths) {
    List<Double> round = depths.stream().map(ClockDepth::withinTurnDeg).sorted().toList();
    List<Double> different = new ArrayList<>();
    for (double deg : round) {
      boolean near =
          !different.isEmpty()
              && (deg - different.get(different.size() - 1) < APART_DEG
                  || different.get(0) + 360 - deg < APART_DEG);
      if (!near) {
        different.add(deg);
      }
    }
    return different.size();
  }
}
