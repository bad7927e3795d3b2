package boreledger.station.bench.gaps;

import boreledger.station.job.DisplayUnit;
import boreledger.station.job.draft.Kind;
import boreledger.station.job.draft.Numerals;
import boreledger.station.job.draft.Typed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A set of feeler leaves as a person typed it.
 *
 * @param text the leaves with blanks between
 * @param unit what a number without a unit is in: the unit that was shown when it was typed
 */
record LeavesText(String text, DisplayUnit unit) {
  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
  // A leaf is marked to a hundredth of a millimetre or a half of a thousandth of an inch.
  private static final int MM_DECIMALS = 4;
  private static final int INCH_DECIMALS = 5;
  private static final String INCHES = " in";

  /** What was remembered by {@link #remembered}. */
  static LeavesText of(String remembered) {
    return remembered.endsWith(INCHES)
        ? new LeavesText(
            remembered.substring(0, remembered.length() - INCHES.length()), DisplayUnit.IN)
        : new LeavesText(remembered, DisplayUnit.MM);
  }

  /** As one text that says its unit. */
  String remembered() {
    boolean says = Numerals.read(Kind.LENGTHS, text).hasUnit();
    return unit == DisplayUnit.IN && !says ? text.strip() + INCHES : text;
  }

  /** The leaves in millimetres, exactly; empty for a text that names none. */
  Optional<List<BigDecimal>> leavesMm() {
    Typed read = Numerals.read(Kind.LENGTHS, text);
    if (!read.isUnderstood() || read.numbers().isEmpty()) {
      return Optional.empty();
    }
    boolean inches = unit == DisplayUnit.IN && !read.hasUnit();
    return Optional.of(
        read.numbers().stream().map(each -> inches ? each.multiply(MM_PER_INCH) : each).toList());
  }

  /** The text as it is shown in a unit: as typed, or in numbers of that unit. */
  String in(DisplayUnit shown) {
    Optional<List<BigDecimal>> leavesMm = leavesMm();
    return shown == unit || leavesMm.isEmpty()
        ? text
        : leavesMm.get().stream().map(mm -> leaf(mm, shown)).collect(Collectors.joining(" "));
  }

  /** One leaf in a unit, with as many digits as it is marked with. */
  static String leaf(BigDecimal mm, DisplayUnit unit) {
    boolean inches = unit == DisplayUnit.IN;
    BigDecimal number =
        inches
            ? mm.divide(MM_PER_INCH, INCH_DECIMALS, RoundingMode.HALF_UP)
            : mm.setScale(MM_DECIMALS, RoundingMode.HALF_UP);
    BigDecimal plain = number.stripTrailingZeros();
    return plain.setScale(Math.max(plain.scale(), inches ? 3 : 2)).toPlainString();
  }
}
