package boreledger.drivers.learn;

import boreledger.drivers.learn.Cut.Kind;
import boreledger.drivers.learn.Field.Coding;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Readings of frames of one length as numbers in bytes. */
final class BinaryFindings {
  private static final int LEAST_SIZES = 3;

  private final Cut cut;
  private final List<ShownValue> shown;
  private final int length;
  private final CheckFound check;
  private final Set<Integer> checked = new HashSet<>();

  BinaryFindings(Cut cut, List<ShownValue> shown) {
    this.cut = cut;
    this.shown = shown;
    length = cut.length();
    boolean modbus = cut.kind() == Kind.MODBUS;
    check = modbus ? null : CheckFound.in(cut.frames()).orElse(null);
    for (int i = 0; check != null && i < check.size(); i++) {
      checked.add(length + check.at() + i);
    }
  }

  /** The readings that give every value shown. */
  List<Finding> all() {
    if (length == 0) {
      return List.of();
    }
    FieldSearch search = new FieldSearch(cut.frames(), shown, checked);
    List<FieldReading> readings =
        cut.kind() == Kind.MODBUS
            ? search.inRegisters(ModbusResponse.HEADER_BYTES, dataBytes())
            : search.everywhere();
    return readings.stream().map(this::finding).filter(f -> f.cut().canBeFound()).toList();
  }

  private int dataBytes() {
    return length - ModbusResponse.HEADER_BYTES - ModbusResponse.CRC_BYTES;
  }

  private Finding finding(FieldReading reading) {
    FieldText text = new FieldText(reading, cut.frames().get(0));
    Cut marked = cut.kind() == Kind.MODBUS ? cut : marked(reading);
    return new Finding(
        text.words(),
        marked,
        cut.kind() == Kind.MODBUS ? text.registerKeys() : text.keys(),
        LengthUnit.MM,
        stepMm(reading),
        check,
        remarks(reading),
        reading.fit().exact(),
        open(reading, marked));
  }

  /** The step of its counts; of a floating-point number that of the finest display seen. */
  private BigDecimal stepMm(FieldReading reading) {
    return reading.field().coding() == Coding.FLOAT
        ? shown.stream().map(ShownValue::stepMm).min(BigDecimal::compareTo).orElseThrow()
        : reading.fit().stepMm();
  }

  private Cut marked(FieldReading reading) {
    Bytes first = cut.frames().get(0);
    Bytes start = isMark(0, reading) ? first.slice(0, 1) : Bytes.EMPTY;
    boolean end = start.size() > 0 && isMark(length - 1, reading);
    return cut.marked(start, end ? first.slice(length - 1, length) : Bytes.EMPTY);
  }

  private boolean isMark(int at, FieldReading reading) {
    return isBeside(at, reading)
        && cut.frames().get(0).at(at) != 0
        && Cuts.sameByte(cut.frames(), at);
  }

  /** Whether a byte has no part in the reading. */
  private boolean isBeside(int at, FieldReading reading) {
    Bits sign = reading.sign();
    Bits inch = reading.fit().inch();
    return reading.field().ownBits(at) == 0
        && !checked.contains(at)
        && (sign == null || sign.at() != at)
        && (inch == null || inch.at() != at);
  }

  private Set<Open> open(FieldReading reading, Cut marked) {
    Set<Open> open = EnumSet.noneOf(Open.class);
    if (Sizes.different(shown) < LEAST_SIZES || Sizes.differentFromZero(shown) < 2) {
      open.add(Open.SIZES);
    }
    if (reading.field().coding() != Coding.FLOAT && !Sizes.hasNegative(shown)) {
      open.add(Open.SIGN);
    }
    boolean settled = reading.fit().inch() != null || Sizes.hasRoundInch(shown);
    if (!settled && cut.kind() != Kind.MODBUS && hasUnexplainedBits(reading, marked)) {
      open.add(Open.INCH);
    }
    return open;
  }

  private boolean hasUnexplainedBits(FieldReading reading, Cut marked) {
    for (int at = marked.startsWith().size(); at < length - marked.endsWith().size(); at++) {
      if (reading.field().ownBits(at) != 0xff && !checked.contains(at)) {
        return true;
      }
    }
    return false;
  }

  private List<String> remarks(FieldReading reading) {
    List<String> remarks = new ArrayList<>();
    for (int at = 0; cut.kind() != Kind.MODBUS && at < length; at++) {
      if (isBeside(at, reading)) {
        String seen = seen(at);
        String what = Cuts.sameByte(cut.frames(), at) ? " was always " : " changes by itself: ";
        remarks.add("Byte " + at + what + seen + "; it is not read.");
      }
    }
    if (cut.kind() == Kind.MODBUS) {
      remarks.add("A response does not name its register: put its address in place of register 0");
      remarks.add("before the gauge is asked by this profile.");
    }
    return remarks;
  }

  private String seen(int at) {
    List<String> values =
        cut.frames().stream().map(frame -> frame.slice(at, at + 1).toHex()).distinct().toList();
    return String.join(", ", values.subList(0, Math.min(4, values.size())))
        + (values.size() > 4 ? " ..." : "");
  }
}
