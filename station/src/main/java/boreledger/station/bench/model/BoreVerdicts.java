package boreledger.station.bench.model;

import boreledger.station.results.CheckResult;
import boreledger.station.results.JobResults.CylinderResults;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Puts a cylinder's checks into one line. */
final class BoreVerdicts {
  private static final Map<String, Text> CHECKS =
      Map.of(
          "taper", Text.CHECK_TAPER,
          "out-of-round", Text.CHECK_OUT_OF_ROUND,
          "bore-min", Text.CHECK_BORE_MIN,
          "bore-max", Text.CHECK_BORE_MAX,
          "wear-limit", Text.CHECK_WEAR_LIMIT);

  private final Lengths lengths;

  BoreVerdicts(Lengths lengths) {
    this.lengths = lengths;
  }

  Verdict verdict(CylinderResults cylinder) {
    List<CheckResult> checks = cylinder.bore().checks();
    String title = Text.VERDICT_CYLINDER.with(Integer.toString(cylinder.cylinder()));
    boolean unread =
        cylinder.bore().positions().stream().allMatch(each -> each.diameterMm() == null);
    if (unread) {
      return new Verdict(Verdict.Kind.OPEN, title, Text.VERDICT_OPEN.with());
    } else if (checks.isEmpty()) {
      return new Verdict(Verdict.Kind.OPEN, title, Text.VERDICT_NO_LIMITS.with());
    }
    return new Verdict(kind(checks), title, words(checks));
  }

  private static Verdict.Kind kind(List<CheckResult> checks) {
    if (any(checks, "beyond")) {
      return Verdict.Kind.BEYOND;
    } else if (any(checks, "undecided")) {
      return Verdict.Kind.LOOK;
    }
    boolean open = checks.stream().anyMatch(each -> each.state() == null);
    return open ? Verdict.Kind.OPEN : Verdict.Kind.KEPT;
  }

  private String words(List<CheckResult> checks) {
    return switch (kind(checks)) {
      case KEPT -> Text.VERDICT_KEPT.with(values(checks));
      case OPEN -> Text.VERDICT_OPEN.with();
      default ->
          checks.stream()
              .filter(each -> is(each, "beyond") || is(each, "undecided"))
              .map(this::finding)
              .collect(Collectors.joining("; "));
    };
  }

  private String finding(CheckResult check) {
    String name = name(check);
    String value = lengths.size(check.valueMm());
    String limit = lengths.size(check.limitMm());
    return is(check, "beyond")
        ? Text.VERDICT_BEYOND.with(name, value, limit)
        : Text.VERDICT_UNDECIDED.with(
            name, value, limit, lengths.size(check.expandedUncertaintyMm()));
  }

  private String values(List<CheckResult> checks) {
    return checks.stream()
        .map(each -> Text.VERDICT_VALUE.with(name(each), lengths.size(each.valueMm())))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static String name(CheckResult check) {
    Text text = CHECKS.get(check.check());
    return text == null ? check.check() : text.with();
  }

  private static boolean any(List<CheckResult> checks, String state) {
    return checks.stream().anyMatch(each -> is(each, state));
  }

  private static boolean is(CheckResult check, String state) {
    return state.equals(check.state());
  }
}
