package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.BoresText;
import boreledger.station.bench.words.Text;
import boreledger.station.results.CheckResult;
import java.util.Map;

/** What a number held against a limit is called, and how it stands. */
public record CheckWords(CheckResult check) {
  private static final Map<String, Text> NAMES =
      Map.of(
          "taper", BenchText.CHECK_TAPER,
          "out-of-round", BenchText.CHECK_OUT_OF_ROUND,
          "bore-min", BenchText.CHECK_BORE_MIN,
          "bore-max", BenchText.CHECK_BORE_MAX,
          "wear-limit", BenchText.CHECK_WEAR_LIMIT,
          "clearance-min", BoresText.CLEARANCE_MIN,
          "clearance-max", BoresText.CLEARANCE_MAX);

  /** What is checked, such as {@code taper}. */
  public String name() {
    return NAMES.get(check.check()).with();
  }

  /** How it stands; never a bare yes or no. */
  public String state() {
    Text state =
        switch (kind()) {
          case KEPT -> BoresText.STATE_WITHIN;
          case BEYOND -> BoresText.STATE_BEYOND;
          case LOOK -> BoresText.STATE_UNDECIDED;
          case OPEN -> BoresText.STATE_OPEN;
        };
    return state.with();
  }

  /** The sign beside it. */
  public Verdict.Kind kind() {
    if (check.state() == null) {
      return Verdict.Kind.OPEN;
    }
    return switch (check.state()) {
      case "within" -> Verdict.Kind.KEPT;
      case "beyond" -> Verdict.Kind.BEYOND;
      default -> Verdict.Kind.LOOK;
    };
  }
}
