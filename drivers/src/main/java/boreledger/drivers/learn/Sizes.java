package boreledger.drivers.learn;

import java.util.List;

/** How much a row of shown values can tell. */
final class Sizes {
  private Sizes() {}

  /** How many different magnitudes there are. */
  static long different(List<ShownValue> shown) {
    return shown.stream().map(value -> value.mm().abs().stripTrailingZeros()).distinct().count();
  }

  /** How many different magnitudes there are besides zero. */
  static long differentFromZero(List<ShownValue> shown) {
    return different(shown.stream().filter(value -> value.mm().signum() != 0).toList());
  }

  static boolean hasNegative(List<ShownValue> shown) {
    return shown.stream().anyMatch(value -> value.mm().signum() < 0);
  }

  static boolean hasRoundInch(List<ShownValue> shown) {
    return shown.stream().anyMatch(ShownValue::isRoundInInches);
  }
}
