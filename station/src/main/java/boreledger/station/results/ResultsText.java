package boreledger.station.results;

import boreledger.station.results.BoreResults.OutOfRoundResult;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults.GapResult;
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

  private ResultsText() {}

  /** The whole text, with line ends. */
  public static String of(JobResults results) {
    ResultsText words = new ResultsText();
    words.line("%s", results.job());
    results.cylinders().forEach(words::cylinder);
    results.cautions().forEach(caution -> words.line("Caution: %s", caution));
    if (results.refused() > 0) {
      words.line("%d samples became no reading; they are kept in the ledger.", results.refused());
    }
    words.line("%n%s", NOTE);
    words.line("Ledger head %s", results.ledgerHead());
    return words.text.toString();
  }

  private void cylinder(CylinderResults cylinder) {
    line("%nCylinder %d", cylinder.cylinder());
    BoreResults bore = cylinder.bore();
    List<String> axes = List.copyOf(bore.taperMm().keySet());
    line("  %-10s%s  out of round", "depth", columns(axes, axis -> pad(axis)));
    for (OutOfRoundResult round : bore.outOfRoundMm()) {
      line(
          "  %-10s%s  %s",
          number(round.depthMm()),
          columns(axes, axis -> pad(diameter(bore, round.depthMm(), axis))),
          length(round.valueMm()));
    }
    line("  %-10s%s", "taper", columns(axes, axis -> pad(length(bore.taperMm().get(axis)))));
    if (bore.shape() != null) {
      line("  shape: %s", bore.shape());
    }
    bore.checks().forEach(check -> line("  %s", words(check)));
    cylinder.rings().forEach(this::ring);
    cylinder.cautions().forEach(caution -> line("  Caution: %s", caution));
  }

  private void ring(RingResults ring) {
    line("  %s ring%s", ring.ring(), ring.state().equals("unknown") ? "" : ": " + ring.state());
    line("    %-8s%12s%20s%12s%8s", "depth", "measured", "expected change", "expected", "E_n");
    for (GapResult gap : ring.gaps()) {
      line(
          "    %-8s%12s%20s%12s%8s%s",
          number(gap.depthMm()),
          length(gap.measuredMm()),
          signed(gap.expectedChangeMm()),
          length(gap.expectedMm()),
          gap.en() == null ? "-" : format("%.1f", gap.en()),
          gap.beyondReadings() ? "  beyond the bore readings" : "");
    }
  }

  private static String words(CheckResult check) {
    return format(
        "%-13s%.4f ± %.4f mm, limit %.4f mm: %s",
        check.check(),
        check.valueMm(),
        check.expandedUncertaintyMm(),
        check.limitMm(),
        verdict(check));
  }

  private static String verdict(CheckResult check) {
    String state = Objects.requireNonNullElse(check.state(), "not all read yet");
    return format("%s (%.0f %% sure to keep it)", state, 100 * check.probabilityWithin());
  }

  private static String diameter(BoreResults bore, double depthMm, String axis) {
    return bore.positions().stream()
        .filter(position -> position.depthMm() == depthMm && position.axis().equals(axis))
        .filter(position -> position.diameterMm() != null)
        .findFirst()
        .map(ResultsText::diameter)
        .orElse("-");
  }

  private static String diameter(PositionResult position) {
    return format("%.4f ± %.4f", position.diameterMm(), position.expandedUncertaintyMm());
  }

  private static String columns(List<String> axes, Function<String, String> cell) {
    return axes.stream().map(cell).collect(Collectors.joining());
  }

  private static String pad(String cell) {
    return format("%18s", cell);
  }

  private static String length(Double mm) {
    return mm == null ? "-" : format("%.4f", mm);
  }

  private static String signed(Double mm) {
    return mm == null ? "-" : format("%+.4f", mm);
  }

  private static String number(double mm) {
    return format("%.1f", mm);
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }

  private void line(String pattern, Object... values) {
    text.append(format(pattern, values)).append(System.lineSeparator());
  }
}
