package boreledger.calc.input;

/** Lets a possible value through unchanged and refuses an impossible one. */
public final class Require {
  private Require() {}

  /**
   * Lets a finite number through.
   *
   * @param what its name in a message, such as {@code bore}
   * @param unit its unit in a message, such as {@code mm}; empty for a plain number
   * @throws ImpossibleInput when it is infinite or not a number
   */
  public static double finite(String what, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw refusal(what, value, unit, "is not a finite number");
    }
    return value;
  }

  /**
   * Lets a finite number above zero through.
   *
   * @throws ImpossibleInput when it is zero, negative, infinite or not a number
   */
  public static double positive(String what, double value, String unit) {
    if (finite(what, value, unit) <= 0) {
      throw refusal(what, value, unit, "is not above zero");
    }
    return value;
  }

  /**
   * Lets zero or a finite number above it through.
   *
   * @throws ImpossibleInput when it is negative, infinite or not a number
   */
  public static double notNegative(String what, double value, String unit) {
    if (finite(what, value, unit) < 0) {
      throw refusal(what, value, unit, "is negative");
    }
    return value;
  }

  /**
   * Lets a list or a count of enough entries through.
   *
   * @param what what is counted, in the plural, such as {@code depths}
   * @throws ImpossibleInput when there are fewer than needed
   */
  public static void atLeast(int need, int have, String what) {
    if (have < need) {
      throw new ImpossibleInput(have + " " + what + " given, at least " + need + " needed");
    }
  }

  private static ImpossibleInput refusal(String what, double value, String unit, String rule) {
    String shown = unit.isEmpty() ? value + "" : value + " " + unit;
    return new ImpossibleInput(what + " " + shown + " " + rule);
  }
}
