package boreledger.station.results;

import boreledger.station.results.AdviceResult.CylinderAdviceResult;
import boreledger.station.results.BoreResults.OutOfRoundResult;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.JobResults.KindChoice;
import boreledger.station.wording.Wording;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Results in plain words, for a terminal. */
public final class ResultsText {
  private static final String NOTE =
      "Diameters are at 20 °C, ± the expanded uncertainty (95 %). Two axes cannot see odd lobes, nor"
          + " four. The engine and ring makers' data decide, not these figures.";

  private final StringBuilder text = new StringBuilder();
  private final LengthWords lengths;
  private final boolean budgets;

  private ResultsText(LengthWords lengths, boolean budgets) {
    this.lengths = lengths;
    this.budgets = budgets;
  }

  /** The whole text, with line ends. */
  public static String of(JobResults results) {
    return of(results, false);
  }

  /** The whole text, on demand with the budget of every diameter, check and gap. */
  public static String of(JobResults results, boolean budgets) {
    ResultsText words = new ResultsText(LengthWords.in(results.displayUnit()), budgets);
    words.whole(results);
    return words.text.toString();
  }

  private void whole(JobResults results) {
    line("%s, lengths in %s", results.job(), lengths.unit());
    results.cylinders().forEach(this::cylinder);
    if (results.advice() != null) {
      advice(results.advice());
    }
    results.ringChoices().forEach(this::choice);
    line("");
    Wording.PLAIN.each(results.cautions()).forEach(caution -> line("Caution: %s", caution));
    if (results.refused() > 0) {
      line("%d samples became no reading; they are kept in the ledger.", results.refused());
    }
    line("%s", NOTE);
    results.gauges().forEach(this::gauge);
    results.tables().forEach(table -> line("Table %s, SHA-256 %s", table.file(), table.sha256()));
    line("Ledger head %s", results.ledgerHead());
  }

  private void cylinder(CylinderResults cylinder) {
    line("%nCylinder %d", cylinder.cylinder());
    BoreResults bore = cylinder.bore();
    List<String> axes = List.copyOf(bore.taperMm().keySet());
    line("  %-10s%s  out of round", "depth", columns(axes, axis -> axis));
    for (OutOfRoundResult round : bore.outOfRoundMm()) {
      line(
          "  %-10s%s  %s",
          lengths.depth(round.depthMm()),
          columns(axes, axis -> diameter(bore, round.depthMm(), axis)),
          lengths.plain(round.valueMm()));
    }
    line("  %-10s%s", "taper", columns(axes, axis -> lengths.plain(bore.taperMm().get(axis))));
    if (bore.shape() != null) {
      line("  shape     %s", bore.shape());
    }
    bore.checks().forEach(this::check);
    if (budgets) {
      bore.positions().forEach(this::budget);
    }
    cylinder.rings().forEach(this::ring);
  }

  private void ring(RingResults ring) {
    new RingText(lengths, this::line).ring(ring);
    if (budgets && ring.tightest() != null) {
      line("    budget of the tightest gap:");
      lines(ring.tightest().budget());
    }
  }

  private void check(CheckResult check) {
    String state = Objects.requireNonNullElse(check.state(), "not all read yet");
    line(
        "  %-14s%s ± %s, limit %s: %s (%s)",
        check.check(),
        lengths.plain(check.valueMm()),
        lengths.plain(check.expandedUncertaintyMm()),
        lengths.plain(check.limitMm()),
        state,
        sureness(check.probabilityWithin()));
    if (budgets) {
      lines(check.budget());
    }
  }

  private void budget(PositionResult position) {
    if (position.budget() != null) {
      line("  budget of %s, %s:", lengths.depth(position.depthMm()), position.axis());
      lines(position.budget());
    }
  }

  private void lines(List<BudgetLine> budget) {
    for (BudgetLine each : budget) {
      line(
          "      %-40s%s  %3.0f %%",
          each.line(), lengths.fine(each.standardUncertaintyMm()), 100 * each.share());
    }
  }

  private void choice(KindChoice kind) {
    line("%nWhich %s ring for which bore", kind.ring());
    kind.choice().words().lines().forEach(each -> line("  %s", each));
  }

  private void advice(AdviceResult advice) {
    line("%nAdvice: %s", cure(advice));
    for (CylinderAdviceResult cylinder : advice.cylinders()) {
      line(
          "  cylinder %d: finished size %s%s%s",
          cylinder.cylinder(),
          lengths.plain(cylinder.finishedMm()),
          cylinder.clearanceMm() == null
              ? ""
              : ", piston clearance " + lengths.plain(cylinder.clearanceMm()),
          cylinder.reasons().isEmpty()
              ? "; honing will do"
              : "; honing alone will not do: "
                  + String.join("; ", Wording.PLAIN.each(cylinder.reasons())));
    }
    line(
        "  On its original centre, a bore worn on one side needs %s.",
        advice.oversizeOnOriginalCentreMm() == null
            ? "more than any listed oversize"
            : "the oversize of " + lengths.of(advice.oversizeOnOriginalCentreMm()));
  }

  private String cure(AdviceResult advice) {
    return switch (advice.cure()) {
      case "hone" -> "hone, all cylinders keep their size.";
      case "oversize" ->
          "bore all cylinders to the oversize of "
              + lengths.of(advice.oversizeMm())
              + (advice.largestListed()
                  ? ", the largest listed: compare the remaining wall with the maker's data first."
                  : ".");
      default -> "no listed oversize cleans every cylinder: sleeve, or another block.";
    };
  }

  private void gauge(GaugeUse use) {
    line(
        "Session %d, %s%s: gauge %s, permissible error %s%s%s",
        use.session(),
        use.measure(),
        use.ring() == null ? "" : " of the " + use.ring() + " ring",
        use.gauge(),
        lengths.plain(use.maxErrorMm()),
        use.driftMm() == null ? "" : ", zero drifted by " + lengths.plain(use.driftMm()),
        use.conditions().words().isEmpty() ? "" : "; " + use.conditions().words());
  }

  private static String sureness(double probability) {
    if (probability > 0.995) {
      return "more than 99 % sure to keep it";
    } else if (probability < 0.005) {
      return "less than 1 % sure to keep it";
    }
    return String.format(Locale.ROOT, "%.0f %% sure to keep it", 100 * probability);
  }

  private String diameter(BoreResults bore, double depthMm, String axis) {
    return bore.positions().stream()
        .filter(position -> position.depthMm() == depthMm && position.axis().equals(axis))
        .filter(position -> position.diameterMm() != null)
        .findFirst()
        .map(
            position ->
                lengths.plain(position.diameterMm())
                    + " ± "
                    + lengths.plain(position.expandedUncertaintyMm()))
        .orElse("-");
  }

  private static String columns(List<String> axes, Function<String, String> cell) {
    return axes.stream()
        .map(axis -> String.format(Locale.ROOT, "%20s", cell.apply(axis)))
        .collect(Collectors.joining());
  }

  private void line(String pattern, Object... values) {
    text.append(String.format(Locale.ROOT, pattern, values)).append(System.lineSeparator());
  }
}
