package boreledger.station.app;

import boreledger.drivers.learn.ShownValue;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Values that a gauge showed, as a person lists them: {@code 0.000,1.000,-2.345,0.5in}. */
final class ShownValues {
  private static final Pattern VALUE =
      Pattern.compile("(?<number>[+-]?\\d{1,6}(?:\\.\\d{1,9})?) *(?<unit>mm|in)?");

  private ShownValues() {}

  /** Reads one value, in millimetres unless it names its unit; empty when it is none. */
  static Optional<ShownValue> one(String text) {
    Matcher value = VALUE.matcher(text);
    return value.matches() ? Optional.of(shown(value, LengthUnit.MM)) : Optional.empty();
  }

  /**
   * Reads a list.
   *
   * @param unit the unit of values that name none
   */
  static List<ShownValue> read(String list, LengthUnit unit) throws UsageProblem {
    List<ShownValue> values = new ArrayList<>();
    for (String each : list.split(",", -1)) {
      Matcher value = VALUE.matcher(each.strip());
      if (!value.matches()) {
        throw new UsageProblem(
            "--shows: \""
                + each.strip()
                + "\" is no value that a gauge shows; list them like 0.000,1.000,5.000");
      }
      values.add(shown(value, unit));
    }
    return values;
  }

  private static ShownValue shown(Matcher value, LengthUnit unit) {
    String named = value.group("unit");
    LengthUnit own = named == null ? unit : named.equals("in") ? LengthUnit.IN : LengthUnit.MM;
    return new ShownValue(new BigDecimal(value.group("number")), own);
  }
}
