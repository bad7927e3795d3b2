package boreledger.drivers.learn;

import boreledger.drivers.learn.Field.Coding;
import boreledger.drivers.learn.Field.Order;
import boreledger.drivers.line.Bytes;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Looks for the number in frames of one length that gives the shown values. */
final class FieldSearch {
  private static final int MOST_BYTES = 8;
  private static final int MOST_FLAG_VALUES = 4;

  private final List<Bytes> frames;
  private final List<ShownValue> shown;
  private final Set<Integer> checked;

  /**
   * @param checked the bytes that a check takes up, which hold no number
   */
  FieldSearch(List<Bytes> frames, List<ShownValue> shown, Set<Integer> checked) {
    this.frames = frames;
    this.shown = shown;
    this.checked = checked;
  }

  /** All readings, each in the width that is written down. */
  List<FieldReading> everywhere() {
    List<Field> fields = new ArrayList<>();
    int length = frames.get(0).size();
    for (int size = 1; size <= Math.min(MOST_BYTES, length); size++) {
      for (int at = 0; at + size <= length; at++) {
        addAt(at, size, List.of(Order.BIG, Order.LITTLE), fields);
      }
    }
    return among(fields);
  }

  /** All readings of the data of a response of registers. */
  List<FieldReading> inRegisters(int at, int size) {
    List<Field> fields = new ArrayList<>();
    addAt(at, size, List.of(Order.BIG, Order.WORDS_LITTLE), fields);
    return among(fields);
  }

  private List<FieldReading> among(List<Field> fields) {
    Map<FieldReading.Kin, List<FieldReading>> families = new LinkedHashMap<>();
    for (Field field : fields) {
      for (FieldReading reading : readings(field)) {
        families.computeIfAbsent(reading.kin(), kin -> new ArrayList<>()).add(reading);
      }
    }
    return families.values().stream().map(FieldReading::chosen).toList();
  }

  private static void addAt(int at, int size, List<Order> orders, List<Field> fields) {
    for (Order order : orders) {
      if (order != Order.BIG && size == 1 || order == Order.WORDS_LITTLE && size < 4) {
        continue;
      }
      fields.add(new Field(at, size, order, Coding.SIGNED, 0));
      for (int strip : new int[] {0, 0x80, 0xf0}) {
        fields.add(new Field(at, size, order, Coding.UNSIGNED, strip));
        fields.add(new Field(at, size, order, Coding.DIGITS, strip));
      }
      for (int strip : new int[] {0, 0x08, 0x0f}) {
        fields.add(new Field(at, size, order, Coding.DIGITS_LOW_FIRST, strip));
      }
      if (size == Float.BYTES || size == Double.BYTES) {
        fields.add(new Field(at, size, order, Coding.FLOAT, 0));
      }
    }
  }

  private List<FieldReading> readings(Field field) {
    if (!isWorthALook(field)) {
      return List.of();
    }
    List<BigDecimal> numbers = new ArrayList<>();
    for (Bytes frame : frames) {
      BigDecimal number = field.read(frame);
      if (number == null) {
        return List.of();
      }
      numbers.add(number);
    }
    List<ShownValue> aligned = Runs.align(numbers, shown);
    return aligned.isEmpty() ? List.of() : readings(field, numbers, aligned);
  }

  private List<FieldReading> readings(
      Field field, List<BigDecimal> numbers, List<ShownValue> aligned) {
    List<Boolean> negative = aligned.stream().map(value -> value.mm().signum() < 0).toList();
    boolean bitNeeded = !field.coding().hasSign() && negative.contains(true);
    List<ShownValue> values =
        field.coding().hasSign() ? aligned : aligned.stream().map(FieldSearch::size).toList();
    List<FieldReading> readings = new ArrayList<>();
    for (Fit fit : new Fits(frames, field, numbers, values).all(checked)) {
      if (bitNeeded) {
        signs(field, negative).forEach(sign -> readings.add(new FieldReading(field, sign, fit)));
      } else {
        readings.add(new FieldReading(field, null, fit));
      }
    }
    return readings;
  }

  private List<Bits> signs(Field field, List<Boolean> negative) {
    List<Bits> signs = new ArrayList<>();
    for (int at = 0; at < frames.get(0).size(); at++) {
      int own = field.ownBits(at);
      Bits bits = checked.contains(at) ? null : Bits.telling(frames, at, own, negative);
      if (bits != null && isFlags(at, own)) {
        signs.add(bits);
      }
    }
    return signs;
  }

  private boolean isFlags(int at, int own) {
    return frames.stream().mapToInt(frame -> frame.at(at) & ~own).distinct().count()
        <= MOST_FLAG_VALUES;
  }

  /** Neither over a check, nor with a lowest byte that never moves, nor stripped of idle bits. */
  private boolean isWorthALook(Field field) {
    for (int at = field.at(); at < field.at() + field.size(); at++) {
      if (checked.contains(at)) {
        return false;
      }
    }
    boolean isFloat = field.coding() == Coding.FLOAT;
    boolean idle = field.strip() != 0 && isIdle(field.index(0), field.strip());
    // A two's complement of which no negative value was shown is no different from one without.
    boolean likeUnsigned = field.coding() == Coding.SIGNED && !Sizes.hasNegative(shown);
    return !idle && !likeUnsigned && (isFloat || !isIdle(field.last(), 0xff));
  }

  private boolean isIdle(int at, int mask) {
    return frames.stream().mapToInt(frame -> frame.at(at) & mask).distinct().count() == 1;
  }

  private static ShownValue size(ShownValue value) {
    return new ShownValue(value.number().abs(), value.unit());
  }
}
