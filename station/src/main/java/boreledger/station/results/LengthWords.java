package boreledger.station.results;

import boreledger.station.job.DisplayUnit;
import boreledger.station.wording.LengthFormat;

/**
 * Lengths in the columns of a terminal: always the same number of decimals, and a minus that every
 * terminal and script knows. An unknown length is a dash.
 */
record LengthWords(LengthFormat format) {
  static LengthWords in(String displayUnit) {
    boolean inches = displayUnit.equals(DisplayUnit.IN.symbol());
    return new LengthWords(new LengthFormat(inches ? DisplayUnit.IN : DisplayUnit.MM));
  }

  /** The unit's symbol. */
  String unit() {
    return format.symbol();
  }

  /** A length without its unit. */
  String plain(Double mm) {
    return ascii(format.number(mm, format.usualDecimals()));
  }

  /** A part of an uncertainty, without its unit: two decimals more, as many parts are small. */
  String fine(double mm) {
    return ascii(format.number(mm, format.usualDecimals() + 2));
  }

  /** A difference without its unit, always with its sign. */
  String signed(Double mm) {
    String signed = ascii(format.difference(mm, format.usualDecimals()));
    return Character.isDigit(signed.charAt(0)) ? "+" + signed : signed;
  }

  /** A depth without its unit. */
  String depth(double mm) {
    return ascii(format.number(mm, format.unit() == DisplayUnit.IN ? 3 : 1));
  }

  /** A length with its unit. */
  String of(Double mm) {
    return mm == null ? "-" : plain(mm) + " " + unit();
  }

  private static String ascii(String number) {
    return number.replace(LengthFormat.MINUS, "-");
  }
}
