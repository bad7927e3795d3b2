package boreledger.station.bench.model;

import boreledger.station.bench.words.Lengths;
import boreledger.station.bench.words.Text;
import boreledger.station.results.CheckResult;
import boreledger.station.results.JobResults.CylinderResults;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Puts a cylinder's checks against the job's limits into words. */
public final class BoreVerdicts {
  private static final String BEYOND = "beyond";
  private static final String UNDECIDED = "undecided";
  private static final Map<String, Text> CHECKS =
      Map.of(
          "taper", Text.CHECK_TAPER,
          "out-of-round", Text.CHECK_OUT_OF_ROUND,
          "bore-min", Text.CHECK_BORE_MIN,
          "bore-max", Text.CHECK_BORE_MAX,
          "wear-limit", Text.CHECK_WEAR_LIMIT);

  private final Lengths lengths;

  /** Verdicts with lengths in a unit. */
  public BoreVerdicts(Lengths lengths) {
    this.lengths = lengths;
  }

  /** A cylinder's verdict. */
  public Verdict verdict(CylinderResults cylinder) {
    List<CheckResult> checks = cylinder.bore().checks();
    String title = Text.VERDICT_CYLINDER.with(Integer.toString(cylinder.cylinder()));
    boolean unread =
        cylinder.bore().positions().stream().allMatch(each -> each.diameterMm() == null);
    if (unread) {
      return new Verdict(Verdict.Kind.OPEN, title, Text.VERDICT_OPEN.with(), "");
    } else if (checks.isEmpty()) {
      return new Verdict(Verdict.Kind.OPEN, title, Text.VERDICT_NO_LIMITS.with(), "");
    }
    return verdict(title, checks);
  }

  private Verdict verdict(String title, List<CheckResult> checks) {
    List<CheckResult> beyond = in(BEYOND, checks);
    List<CheckResult> undecided = in(UNDECIDED, checks);
    if (!beyond.isEmpty()) {
      String words = Text.VERDICT_BEYOND.with(names(beyond));
      return new Verdict(Verdict.Kind.BEYOND, title, words, limits(beyond));
    } else if (!undecided.isEmpty()) {
      String words = Text.VERDICT_UNDECIDED.with(names(undecided));
      return new Verdict(Verdict.Kind.LOOK, title, words, limits(undecided));
    } else if (checks.stream().anyMatch(each -> each.state() == null)) {
      return new Verdict(Verdict.Kind.OPEN, title, Text.VERDICT_OPEN.with(), "");
    }
    return new Verdict(Verdict.Kind.KEPT, title, Text.VERDICT_KEPT.with(), values(checks));
  }

  private String limits(List<CheckResult> checks) {
    return checks.stream().map(this::limit).collect(Collectors.joining("; "));
  }

  private String limit(CheckResult check) {
    return Text.VERDICT_LIMIT.with(
        name(check),
        lengths.number(check.valueMm()),
        lengths.size(check.expandedUncertaintyMm()),
        lengths.size(check.limitMm()));
  }

  /** Each value once: two checks may hold the same one against different limits. */
  private String values(List<CheckResult> checks) {
    Map<Double, String> byValue = new LinkedHashMap<>();
    for (CheckResult check : checks) {
      String words = Text.VERDICT_VALUE.with(name(check), lengths.number(check.valueMm()));
      byValue.putIfAbsent(check.valueMm(), words);
    }
    return String.join(", ", byValue.values()) + " " + lengths.symbol();
  }

  private static String names(List<CheckResult> checks) {
    return checks.stream().map(BoreVerdicts::name).collect(Collectors.joining(", "));
  }

  private static String name(CheckResult check) {
    Text text = CHECKS.get(check.check());
    return text == null ? check.check() : text.with();
  }

  private static List<CheckResult> in(String state, List<CheckResult> checks) {
    return checks.stream().filter(each -> state.equals(each.state())).toList();
  }
}
