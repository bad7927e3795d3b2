package boreledger.station.bench.start;

import boreledger.station.bench.words.StartText;
import java.util.Optional;

/**
 * A temperature as it is typed: a number with point or comma, perhaps with its unit; nothing when
 * it was not taken.
 *
 * @param typed as it stands in the field
 */
record Temperature(String typed) {
  private static final double COLDEST_C = -40;
  private static final double HOTTEST_C = 60;

  /** In degrees Celsius; null when it was not taken or cannot be read. */
  Double degC() {
    return problem().isEmpty() && !plain().isEmpty() ? Double.valueOf(plain()) : null;
  }

  /** What is wrong with it, in words; empty when nothing is. */
  Optional<String> problem() {
    if (plain().isEmpty()) {
      return Optional.empty();
    }
    if (!plain().matches("[+-]?\\d{1,4}(\\.\\d*)?")) {
      return Optional.of(StartText.TEMP_NO_NUMBER.with(typed.strip()));
    }
    double degC = Double.parseDouble(plain());
    return degC < COLDEST_C || degC > HOTTEST_C
        ? Optional.of(StartText.TEMP_UNLIKELY.with(plain()))
        : Optional.empty();
  }

  private String plain() {
    return typed.strip().replace(',', '.').replaceAll("\\s*(°\\s*)?[Cc]?$", "");
  }
}
