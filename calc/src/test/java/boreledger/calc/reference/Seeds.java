package boreledger.calc.reference;

import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Loops over fixed seeds that name the seed that failed. */
public final class Seeds {
  /** How many seeds a property is tried with. */
  public static final int COUNT = 1000;

  private Seeds() {}

  /** Runs a property with every seed. */
  public static void each(Consumer<Random> property) {
    int ran = 0;
    for (long seed = 1; seed <= COUNT; seed++) {
      try {
        property.accept(new Random(seed));
        ran++;
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("seed " + seed + ": " + e.getMessage(), e);
      }
    }
    if (ran != COUNT) {
      throw new AssertionError("only " + ran + " seeds ran");
    }
  }

  /** How many of the seeds give what is looked for. */
  public static int count(Predicate<Random> found) {
    int[] hits = new int[1];
    each(random -> hits[0] += found.test(random) ? 1 : 0);
    return hits[0];
  }

  /** A number between two, evenly. */
  public static double between(Random random, double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
