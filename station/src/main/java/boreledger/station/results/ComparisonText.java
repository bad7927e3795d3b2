package boreledger.station.results;

import boreledger.station.results.SessionComparison.Change;
import boreledger.station.results.SessionComparison.Side;
import boreledger.station.wording.Wording;
import java.util.List;
import java.util.Locale;

/** A comparison of two sessions in words. */
public final class ComparisonText {
  private ComparisonText() {}

  /** Some lines. */
  public static String of(SessionComparison comparison) {
    StringBuilder text = new StringBuilder();
    side(text, "before", comparison.before());
    side(text, "after ", comparison.after());
    int cylinder = 0;
    for (Change change : comparison.changes()) {
      if (change.cylinder() != cylinder) {
        cylinder = change.cylinder();
        text.append("Cylinder ").append(cylinder).append('\n');
      }
      text.append(line(change));
    }
    if (comparison.changes().isEmpty()) {
      text.append("No place was read in both.\n");
    }
    places(text, "Only before: ", comparison.onlyBefore());
    places(text, "Only after: ", comparison.onlyAfter());
    Wording.PLAIN
        .each(comparison.cautions())
        .forEach(caution -> text.append("Caution: ").append(caution).append('\n'));
    return text.toString();
  }

  private static void side(StringBuilder text, String name, Side side) {
    text.append(name)
        .append(": session ")
        .append(side.session())
        .append(" of ")
        .append(side.job())
        .append(", ")
        .append(side.started())
        .append('\n');
  }

  private static String line(Change change) {
    String place =
        (change.depthMm() == null ? "" : String.format(Locale.ROOT, " %.1f mm", change.depthMm()))
            + (change.axis() == null ? "" : " " + change.axis());
    return String.format(
        Locale.ROOT,
        "  %-28s %9.4f -> %9.4f  %s ± %.4f mm  %s%n",
        change.what() + place,
        change.beforeMm(),
        change.afterMm(),
        LengthWords.in("mm").signed(change.changeMm()),
        change.expandedUncertaintyMm(),
        change.state());
  }

  private static void places(StringBuilder text, String lead, List<String> places) {
    if (!places.isEmpty()) {
      text.append(lead).append(String.join("; ", places)).append('\n');
    }
  }
}
