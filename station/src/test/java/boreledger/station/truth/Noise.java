package boreledger.station.truth;

import java.util.Random;

/** Seeded chance whose numbers are the same on every machine. */
public final class Noise {
  private final Random random;

  /** Chance that begins with this seed. */
  public Noise(long seed) {
    random = new Random(seed);
  }

  /** A number evenly spread from low to high. */
  public double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** A whole number from low to high, both included. */
  public int between(int low, int high) {
    return low + random.nextInt(high - low + 1);
  }

  /** A normally distributed number around 0 (polar coordinates of two even ones). */
  public double normal(double standardDeviation) {
    double radius = StrictMath.sqrt(-2 * StrictMath.log(1 - random.nextDouble()));
    return standardDeviation * radius * StrictMath.cos(2 * StrictMath.PI * random.nextDouble());
  }

  /** True as often as the share says. */
  public boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** The source itself, for the library's own shuffles. */
  public Random source() {
    return random;
  }
}
