package boreledger.station.bench.model;

import boreledger.station.bench.words.Text;
import boreledger.station.results.CheckResult;
import java.util.Map;

/** What a number held against a limit is called, and how it stands. */
public record CheckWords(CheckResult check) {
  private static final Map<String, Text> NAMES =
      Map.of(
          "taper", Text.CHECK_TAPER,
          "out-of-round", Text.CHECK_OUT_OF_ROUND,
          "bore-min", Text.CHECK_BORE_MIN,
          "bore-max", Text.CHECK_BORE_MAX,
          "wear-limit", Text.CHECK_WEAR_LIMIT,
          "clearance-min", Text.BORES_CLEARANCE_MIN,
          "clearance-max", Text.BORES_CLEARANCE_MAX);

  /** What is checked, such as {@code taper}. */
  public String name() {
    return NAMES.get(check.check()).with();
  }

  /** How it stands; never a bare yes or no. */
  public String state() {
    Text state =
        switch (kind()) {
          case KEPT -> Text.BORES_STATE_WITHIN;
          case BEYOND -> Text.BORES_STATE_BEYOND;
          case LOOK -> Text.BORES_STATE_UNDECIDED;
          case OPEN -> Text.BORES_STATE_OPEN;
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
