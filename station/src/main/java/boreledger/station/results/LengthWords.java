package boreledger.station.results;

import java.util.Locale;

/**
 * Lengths as people read them: millimetres with four decimals or inches with five, in both of which
 * the last digit is finer than any gauge at the bench. An unknown length is a dash.
 *
 * @param inches whether inches are shown
 */
record LengthWords(boolean inches) {
  private static final double MM_PER_INCH = 25.4;

  static LengthWords in(String displayUnit) {
    return new LengthWords(displayUnit.equals("in"));
  }

  /** The unit's symbol. */
  String unit() {
    return inches ? "in" : "mm";
  }

  /** A length without its unit. */
  String plain(Double mm) {
    return mm == null ? "-" : format(inches ? "%.5f" : "%.4f", mm);
  }

  /** A difference without its unit, always with its sign. */
  String signed(Double mm) {
    return mm == null ? "-" : format(inches ? "%+.5f" : "%+.4f", mm);
  }

  /** A depth without its unit. */
  String depth(double mm) {
    return format(inches ? "%.3f" : "%.1f", mm);
  }

  /** A length with its unit. */
  String of(Double mm) {
    return mm == null ? "-" : plain(mm) + " " + unit();
  }

  private String format(String pattern, double mm) {
    return String.format(Locale.ROOT, pattern, inches ? mm / MM_PER_INCH : mm);
  }
}
