package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.math.BigDecimal;
import java.nio.ByteOrder;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The keys of a {@code [decode]} table that say how bytes become a number. */
final class NumberKeys {
  static final Map<String, ByteOrder> ORDERS =
      new TreeMap<>(Map.of("big", ByteOrder.BIG_ENDIAN, "little", ByteOrder.LITTLE_ENDIAN));
  private static final Map<String, Boolean> HIGH_NIBBLE_FIRST =
      new TreeMap<>(Map.of("high-first", true, "low-first", false));

  private NumberKeys() {}

  static BinaryNumber read(Table table, String coding, FramePlace place) throws FileProblem {
    BitTest negative = place.bitTest(table, "negative");
    BitField position = place.bitField(table, "decimal_position");
    NumberCoding numberCoding = coding(table, coding, negative != null);
    if (position != null && table.has("scale")) {
      throw table
          .required("scale")
          .problem("both scale and decimal_position, expected one of them");
    }
    boolean mayLeaveOut = position != null || coding.equals("float");
    BigDecimal scale = mayLeaveOut ? scale(table, BigDecimal.ONE) : scale(table.required("scale"));
    Optional<Value> inch = table.optional("inch_scale");
    BigDecimal inchScale = inch.isPresent() ? scale(inch.get()) : scale;
    return new BinaryNumber(numberCoding, scale, inchScale, position, negative);
  }

  /** The decimal number of {@code scale}. */
  static BigDecimal scale(Table table, BigDecimal otherwise) throws FileProblem {
    Optional<Value> scale = table.optional("scale");
    return scale.isPresent() ? scale(scale.get()) : otherwise;
  }

  private static BigDecimal scale(Value value) throws FileProblem {
    BigDecimal scale = value.decimal();
    if (scale.signum() == 0) {
      throw value.expected("a number other than 0");
    }
    return scale;
  }

  private static NumberCoding coding(Table table, String coding, boolean hasSignBit)
      throws FileProblem {
    return switch (coding) {
      case "integer" -> new NumberCoding.Whole(signed(table, hasSignBit));
      case "packed-digits" -> new NumberCoding.PackedDigits(highNibbleFirst(table));
      default -> new NumberCoding.Floating();
    };
  }

  private static boolean signed(Table table, boolean hasSignBit) throws FileProblem {
    Optional<Value> signed = table.optional("signed");
    if (signed.isEmpty()) {
      return !hasSignBit;
    }
    if (signed.get().flag() && hasSignBit) {
      throw signed.get().expected("false: negative already says the sign");
    }
    return signed.get().flag();
  }

  private static boolean highNibbleFirst(Table table) throws FileProblem {
    Optional<Value> order = table.optional("nibble_order");
    return order.isEmpty() || order.get().oneOf(HIGH_NIBBLE_FIRST);
  }
}
