package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.job.Engine.Arrangement;
import boreledger.station.plan.Position;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The block from above.
 *
 * @param bores in the order of their numbers; empty before the first session
 * @param axisDeg the axis to gauge now, in degrees from the crankshaft's direction; null when the
 *     position has none
 * @param note what to know about the drawing; often empty
 * @param spoken the picture in words, for screen readers
 */
public record BlockPicture(
    Arrangement arrangement, List<Bore> bores, Double axisDeg, String note, String spoken) {
  private static final double ACROSS_DEG = 90;
  private static final double HALF_TURN_DEG = 180;

  /**
   * One bore.
   *
   * @param now whether the position to gauge now is in it
   * @param entry where to go in it: what waits there first, or its first position
   */
  public record Bore(int number, int done, int planned, boolean now, Position entry) {}

  /** Takes a copy of the list. */
  public BlockPicture {
    bores = List.copyOf(bores);
  }

  static BlockPicture none() {
    String spoken = BenchText.BLOCK_ACCESSIBLE_NONE.with();
    return new BlockPicture(Arrangement.INLINE, List.of(), null, "", spoken);
  }

  static BlockPicture of(Sitting sitting) {
    Position next = sitting.progress().next();
    Arrangement arrangement = sitting.job().engine().arrangement();
    List<Bore> bores =
        IntStream.rangeClosed(1, sitting.job().engine().cylinders())
            .mapToObj(number -> bore(sitting, number))
            .toList();
    return new BlockPicture(
        arrangement,
        bores,
        axisDeg(sitting, next),
        arrangement == Arrangement.INLINE ? "" : BenchText.BLOCK_BANKS.with(),
        spoken(sitting, next));
  }

  private static Double axisDeg(Sitting sitting, Position next) {
    return next instanceof Position.Bore bore
        ? Double.valueOf(axisDeg(sitting.job().plan().axes(), bore.axis()))
        : null;
  }

  /**
   * Axes are evenly spaced around the bore: the thrust axis lies across the crankshaft, the pin
   * axis along it, and where neither is named the first one lies across.
   */
  static double axisDeg(List<String> axes, String axis) {
    double stepDeg = HALF_TURN_DEG / axes.size();
    double firstDeg = ACROSS_DEG;
    if (axes.contains("thrust")) {
      firstDeg = ACROSS_DEG - axes.indexOf("thrust") * stepDeg;
    } else if (axes.contains("pin")) {
      firstDeg = -axes.indexOf("pin") * stepDeg;
    }
    double deg = (firstDeg + axes.indexOf(axis) * stepDeg) % HALF_TURN_DEG;
    return deg < 0 ? deg + HALF_TURN_DEG : deg;
  }

  private static Bore bore(Sitting sitting, int number) {
    List<Position> positions = sitting.ofCylinder(number);
    int done = (int) positions.stream().filter(sitting::has).count();
    boolean now = sitting.next().filter(next -> Sitting.isIn(next, number)).isPresent();
    return new Bore(number, done, positions.size(), now, sitting.entry(number));
  }

  private static String spoken(Sitting sitting, Position next) {
    return next == null
        ? BenchText.BLOCK_ACCESSIBLE_NONE.with()
        : BenchText.BLOCK_ACCESSIBLE.with(Place.brief(sitting.lengths(), next));
  }
}
