package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.results.CheckResult;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.wording.LengthFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Puts a cylinder's checks against the job's limits into words. */
public final class BoreVerdicts {
  private final LengthFormat lengths;

  /** Verdicts with lengths in a unit. */
  public BoreVerdicts(LengthFormat lengths) {
    this.lengths = lengths;
  }

  /** A cylinder's verdict. */
  public Verdict verdict(CylinderResults cylinder) {
    List<CheckResult> checks = cylinder.bore().checks();
    String title = BenchText.VERDICT_CYLINDER.with(Integer.toString(cylinder.cylinder()));
    boolean unread =
        cylinder.bore().positions().stream().allMatch(each -> each.diameterMm() == null);
    if (unread) {
      return new Verdict(Verdict.Kind.OPEN, title, BenchText.VERDICT_OPEN.with(), "");
    } else if (checks.isEmpty()) {
      return new Verdict(Verdict.Kind.OPEN, title, BenchText.VERDICT_NO_LIMITS.with(), "");
    }
    return verdict(title, checks);
  }

  private Verdict verdict(String title, List<CheckResult> checks) {
    List<CheckResult> beyond = in(Verdict.Kind.BEYOND, checks);
    List<CheckResult> undecided = in(Verdict.Kind.LOOK, checks);
    if (!beyond.isEmpty()) {
      String words = BenchText.VERDICT_BEYOND.with(names(beyond));
      return new Verdict(Verdict.Kind.BEYOND, title, words, limits(beyond));
    } else if (!undecided.isEmpty()) {
      String words = BenchText.VERDICT_UNDECIDED.with(names(undecided));
      return new Verdict(Verdict.Kind.LOOK, title, words, limits(undecided));
    } else if (checks.stream().anyMatch(each -> each.state() == null)) {
      return new Verdict(Verdict.Kind.OPEN, title, BenchText.VERDICT_OPEN.with(), "");
    }
    return new Verdict(Verdict.Kind.KEPT, title, BenchText.VERDICT_KEPT.with(), values(checks));
  }

  private String limits(List<CheckResult> checks) {
    return checks.stream().map(this::limit).collect(Collectors.joining("; "));
  }

  private String limit(CheckResult check) {
    int decimals = lengths.decimals(check.expandedUncertaintyMm());
    return BenchText.VERDICT_LIMIT.with(
        new CheckWords(check).name(),
        lengths.number(check.valueMm(), decimals),
        lengths.length(check.expandedUncertaintyMm(), decimals),
        lengths.stated(check.limitMm()) + " " + lengths.symbol());
  }

  /** Each value once: two checks may hold the same one against different limits. */
  private String values(List<CheckResult> checks) {
    Map<Double, String> byValue = new LinkedHashMap<>();
    for (CheckResult check : checks) {
      int decimals = lengths.decimals(check.expandedUncertaintyMm());
      String value = lengths.number(check.valueMm(), decimals);
      byValue.putIfAbsent(
          check.valueMm(), BenchText.VERDICT_VALUE.with(new CheckWords(check).name(), value));
    }
    return String.join(", ", byValue.values()) + " " + lengths.symbol();
  }

  private static String names(List<CheckResult> checks) {
    return checks.stream()
        .map(check -> new CheckWords(check).name())
        .collect(Collectors.joining(", "));
  }

  private static List<CheckResult> in(Verdict.Kind kind, List<CheckResult> checks) {
    return checks.stream().filter(each -> new CheckWords(each).kind() == kind).toList();
  }
}
