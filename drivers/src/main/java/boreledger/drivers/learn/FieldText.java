package boreledger.drivers.learn;

import boreledger.drivers.learn.Field.Coding;
import boreledger.drivers.line.Bytes;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A reading of a number in bytes, in a profile's keys and in words. */
final class FieldText {
  private final Field field;
  private final Bits sign;
  private final Bits inch;
  private final Fit fit;
  private final Bytes frame;

  /**
   * @param frame one of the frames
   */
  FieldText(FieldReading reading, Bytes frame) {
    this.frame = frame;
    field = reading.field();
    fit = reading.fit();
    int top = field.index(0);
    boolean signOnTop = reading.sign() != null && reading.sign().at() == top;
    boolean inchOnTop = fit.inch() != null && fit.inch().at() == top;
    int others = field.strip() & ~(inchOnTop ? fit.inch().mask() : 0);
    // Every stripped bit has to be named, or it would count as part of the number.
    sign = signOnTop ? reading.sign().widened(others, frame) : reading.sign();
    inch = inchOnTop && !signOnTop ? fit.inch().widened(field.strip(), frame) : fit.inch();
  }

  /** The keys for a number in bytes of the frame. */
  List<String> keys() {
    List<String> keys = new ArrayList<>(List.of(field.toml(frame.size())));
    keys.addAll(worth());
    return keys;
  }

  /** The keys for a number in registers of a Modbus response. */
  List<String> registerKeys() {
    Coding coding = field.coding();
    List<String> keys = new ArrayList<>();
    keys.add("kind = \"modbus-registers\"");
    keys.add("slave = " + frame.at(0));
    keys.add("function = " + frame.at(1));
    keys.add("register = 0");
    keys.add("registers = " + field.size() / 2);
    String type = coding == Coding.FLOAT ? "float" : "integer";
    keys.add("type = \"" + (coding.isDigits() ? "packed-digits" : type) + '"');
    keys.add("word_order = \"" + field.order().toml() + '"');
    if (type.equals("integer") && !coding.isDigits()) {
      keys.add("signed = " + (coding == Coding.SIGNED));
    }
    keys.addAll(worth());
    return keys;
  }

  /** What it is, for a person. */
  String words() {
    String signWords = sign == null ? "" : ", sign in a bit of byte " + sign.at();
    String inchWords = inch == null ? "" : ", inch in a bit of byte " + inch.at();
    String worth = field.coding() == Coding.FLOAT ? "" : ", " + plain(fit.stepMm()) + " mm a count";
    return field.words() + signWords + inchWords + worth;
  }

  private List<String> worth() {
    List<String> keys = new ArrayList<>();
    keys.add("scale = " + plain(fit.stepMm()));
    if (inch != null) {
      keys.add("inch_scale = " + plain(fit.stepIn()));
      keys.add("inch = " + inch.toml(frame.size()));
      if (Integer.bitCount(inch.mask()) > 1) {
        keys.add("millimetre = " + inch.oppositeToml(frame.size()));
      }
    }
    if (sign != null) {
      keys.add("negative = " + sign.toml(frame.size()));
    }
    return keys;
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }
}
