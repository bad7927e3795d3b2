package boreledger.drivers.learn;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;

/**
 * A number in the frame that gives the shown values.
 *
 * @param sign the bits that say negative; null when the number says so itself or nothing was
 *     negative
 */
record FieldReading(Field field, Bits sign, Fit fit) {
  private static final BigDecimal USUAL_RANGE_MM = BigDecimal.valueOf(30);

  /** What two readings share that differ only in how wide the number is taken. */
  record Kin(
      Field.Order order,
      Field.Coding coding,
      int last,
      int floatSize,
      int signAt,
      int inchAt,
      BigDecimal stepMm,
      BigDecimal stepIn) {}

  Kin kin() {
    boolean isFloat = field.coding() == Field.Coding.FLOAT;
    return new Kin(
        field.order(),
        field.coding(),
        field.last(),
        isFloat ? field.size() : 0,
        sign == null ? -1 : sign.at(),
        fit.inch() == null ? -1 : fit.inch().at(),
        fit.stepMm(),
        fit.stepIn());
  }

  /**
   * The one of its kin that is written down. A two's complement is taken as wide as its sign was
   * seen to reach. A number without sign is taken only as wide as a gauge's range asks for: a zero
   * beside it may be something else.
   */
  static FieldReading chosen(List<FieldReading> kin) {
    Comparator<FieldReading> bySize = Comparator.comparingInt(reading -> reading.field().size());
    FieldReading widest = kin.stream().max(bySize).orElseThrow();
    if (widest.field().coding().hasSign()) {
      return widest;
    }
    int leastStrip =
        kin.stream().mapToInt(r -> Integer.bitCount(r.field().strip())).min().orElse(0);
    return kin.stream()
        .filter(reading -> Integer.bitCount(reading.field().strip()) == leastStrip)
        .sorted(bySize)
        .filter(FieldReading::coversUsualRange)
        .findFirst()
        .orElse(widest);
  }

  private boolean coversUsualRange() {
    return field.capacity().multiply(fit.stepMm()).compareTo(USUAL_RANGE_MM) >= 0;
  }
}
