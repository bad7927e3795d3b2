package boreledger.station.job.draft;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads numbers as people type them: a comma may stand for the decimal point, a unit may follow.
 *
 * <ul>
 *   <li>{@code 96,03} is 96.03; {@code 3.78 in} is 96.012 (mm), as one inch is 25.4 mm exactly.
 *   <li>Several numbers stand between blanks or semicolons, or commas with a blank behind them.
 *   <li>A unit behind the last of several numbers, and no other, holds for all of them.
 *   <li>{@code 12,60,108} could be read in several ways and is not understood.
 *   <li>A coefficient below 0.001 is per kelvin, any other is in millionths per kelvin.
 * </ul>
 */
public final class Numerals {
  private static final String NUMBER = "[+-]?(?:\\d+(?:[.,]\\d*)?|\\.\\d+)(?:[eE][+-]?\\d{1,2})?";
  private static final Pattern ITEM =
      Pattern.compile("\\s*(" + NUMBER + ")\\s*([^\\s\\d;,.+-]+)?(?:\\s*;|,(?=\\s)|(?=\\s)|$)");
  private static final Pattern COMMAS =
      Pattern.compile("\\d,\\d[\\d.]*,\\d|\\d,\\d+\\.\\d|\\d\\.\\d+,\\d");
  private static final int LONGEST = 500;
  private static final BigDecimal ONE = BigDecimal.ONE;
  private static final BigDecimal INCH_MM = new BigDecimal("25.4");
  private static final BigDecimal MICROMETRE_MM = new BigDecimal("0.001");
  private static final BigDecimal PER_KELVIN_BELOW = new BigDecimal("0.001");
  private static final Map<String, BigDecimal> LENGTH_UNITS =
      Map.of(
          "mm", ONE,
          "in", INCH_MM,
          "inch", INCH_MM,
          "inches", INCH_MM,
          "\"", INCH_MM,
          "\u2033", INCH_MM,
          "um", MICROMETRE_MM,
          "\u00b5m", MICROMETRE_MM,
          "\u03bcm", MICROMETRE_MM);
  private static final Map<Kind, Map<String, BigDecimal>> UNITS =
      Map.of(
          Kind.LENGTH, LENGTH_UNITS,
          Kind.LENGTHS, LENGTH_UNITS,
          Kind.ANGLES, Map.of("deg", ONE, "\u00b0", ONE),
          Kind.CELSIUS, Map.of("c", ONE, "\u00b0c", ONE, "degc", ONE),
          Kind.KELVIN, Map.of("k", ONE));

  private Numerals() {}

  /** Reads what was typed into a field of numbers; a blank text is no numbers and no fault. */
  public static Typed read(Kind kind, String text) {
    String typed = text.strip().replace('\u2212', '-');
    if (typed.length() > LONGEST) {
      return Typed.not(Fault.NO_NUMBER);
    }
    if (COMMAS.matcher(typed).find()) {
      return Typed.not(Fault.WHICH_COMMA);
    }
    List<BigDecimal> numbers = new ArrayList<>();
    List<String> units = new ArrayList<>();
    Matcher item = ITEM.matcher(typed);
    int read = 0;
    while (read < typed.length() && item.find() && item.start() == read) {
      numbers.add(new BigDecimal(item.group(1).replace(',', '.')));
      units.add(item.group(2) == null ? "" : item.group(2));
      read = item.end();
    }
    if (!typed.substring(read).isBlank() || numbers.size() > 1 && !kind.isList()) {
      return Typed.not(kind == Kind.COUNT ? Fault.NO_COUNT : Fault.NO_NUMBER);
    }
    return inFileUnit(kind, numbers, units);
  }

  private static Typed inFileUnit(Kind kind, List<BigDecimal> numbers, List<String> units) {
    boolean hasUnit = units.stream().anyMatch(unit -> !unit.isEmpty());
    boolean onlyLast = units.stream().filter(unit -> !unit.isEmpty()).count() == 1;
    String last = units.isEmpty() ? "" : units.get(units.size() - 1);
    List<BigDecimal> values = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      String unit = onlyLast && !last.isEmpty() ? last : units.get(i);
      BigDecimal factor = unit.isEmpty() ? ONE : factor(kind, unit);
      if (factor == null) {
        return Typed.not(Fault.OTHER_UNIT);
      }
      values.add(numbers.get(i).multiply(factor));
    }
    if (kind == Kind.COEFFICIENT) {
      values.replaceAll(Numerals::perKelvin);
    }
    if (kind == Kind.COUNT && values.stream().anyMatch(Numerals::isFraction)) {
      return Typed.not(Fault.NO_COUNT);
    }
    return new Typed(values, null, hasUnit);
  }

  private static BigDecimal factor(Kind kind, String unit) {
    return UNITS.getOrDefault(kind, Map.of()).get(unit.toLowerCase(Locale.ROOT));
  }

  private static BigDecimal perKelvin(BigDecimal typed) {
    return typed.abs().compareTo(PER_KELVIN_BELOW) < 0 ? typed : typed.movePointLeft(6);
  }

  private static boolean isFraction(BigDecimal number) {
    return number.signum() != 0 && number.stripTrailingZeros().scale() > 0;
  }
}
