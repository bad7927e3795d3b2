package boreledger.station.report;

import boreledger.station.results.CheckResult;
import boreledger.station.wording.LengthFormat;
import java.util.Locale;
import java.util.Optional;

/** A number held against a limit, in words. */
record CheckWords(LengthFormat lengths, CheckResult check) {
  /** What is checked, such as {@code largest diameter}. */
  String name() {
    return switch (check.check()) {
      case "bore-min" -> "smallest diameter";
      case "bore-max" -> "largest diameter";
      case "wear-limit" -> "largest diameter (wear limit)";
      case "out-of-round" -> "out of round";
      case "clearance-min" -> "smallest piston clearance";
      case "clearance-max" -> "largest piston clearance";
      default -> check.check();
    };
  }

  String value() {
    return lengths.number(check.valueMm(), check.expandedUncertaintyMm());
  }

  /** The limit, such as {@code at most 96.030}. */
  String limit() {
    boolean lower = check.check().endsWith("-min");
    return (lower ? "at least " : "at most ") + lengths.stated(check.limitMm());
  }

  /** Never a bare yes or no. */
  String verdict() {
    if (check.state() == null) {
      return "not all read yet";
    }
    return switch (check.state()) {
      case "within" -> "within the limit";
      case "beyond" -> "BEYOND the limit";
      default -> "UNDECIDED: too near the limit to tell";
    };
  }

  /** How probable it is that the true value keeps the limit; a dash while that may change. */
  String sureness() {
    if (check.state() == null) {
      return "-";
    }
    double probability = check.probabilityWithin();
    if (probability > 0.995) {
      return "more than 99 %";
    } else if (probability < 0.005) {
      return "less than 1 %";
    }
    return String.format(Locale.ROOT, "%.0f %%", 100 * probability);
  }

  /** In one clause with its numbers, such as for a table of many bores. */
  String clause() {
    return name() + " " + value() + ", " + limit() + ": " + verdict();
  }

  /** What a person must mind; empty when the limit is surely kept or not yet decided about. */
  Optional<String> caution() {
    String subject = name() + " of " + value() + " " + lengths.symbol();
    if ("beyond".equals(check.state())) {
      return Optional.of(
          subject + " is beyond the limit, " + limit() + ". The engine maker's data decide.");
    } else if ("undecided".equals(check.state())) {
      return Optional.of(
          subject
              + " lies so near its limit, "
              + limit()
              + ", that this measurement cannot tell on which side. Gauge more surely, or treat it"
              + " as beyond; the engine maker's data decide.");
    }
    return Optional.empty();
  }
}
