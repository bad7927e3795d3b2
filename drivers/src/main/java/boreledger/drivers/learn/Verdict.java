package boreledger.drivers.learn;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether what was found is certain, and else what would make it so. */
final class Verdict {
  // None is a round number of inches: such a value is only asked for as inches.
  private static final List<String> TELLING_MM =
      List.of("0.000", "1.000", "5.000", "-2.345", "11.234", "2.345", "-7.891", "9.876", "-0.123");

  private final List<Finding> findings;
  private final List<ShownValue> shown;
  private final Set<Open> open = EnumSet.noneOf(Open.class);

  Verdict(List<Finding> findings, List<ShownValue> shown) {
    this.findings = findings;
    this.shown = shown;
    findings.forEach(finding -> open.addAll(finding.open()));
    if (Sizes.different(shown) < 2) {
      open.add(Open.SIZES);
    }
  }

  boolean isCertain() {
    return findings.size() == 1 && open.isEmpty();
  }

  Set<Open> open() {
    return open;
  }

  String why() {
    if (isCertain()) {
      return "exactly one reading of the bytes gives every value shown";
    }
    String unseen = open.stream().map(Open::why).collect(Collectors.joining(", "));
    if (findings.isEmpty()) {
      return "no reading of the bytes gives every value shown";
    }
    String count = findings.size() == 1 ? "one reading fits" : findings.size() + " readings fit";
    return open.isEmpty() ? count + " the bytes" : count + ", but " + unseen;
  }

  /** What to show next; null when certain. */
  NextValue next() {
    if (isCertain()) {
      return null;
    }
    for (Open each : open) {
      if (!wasShown(each.wish().mm())) {
        return each.wish();
      }
    }
    String mm = TELLING_MM.stream().filter(this::isNew).findFirst().orElse("-3.217");
    return new NextValue(new BigDecimal(mm), "one more value, " + mm + " mm", null);
  }

  private boolean isNew(String mm) {
    return !wasShown(new BigDecimal(mm));
  }

  private boolean wasShown(BigDecimal mm) {
    return shown.stream().anyMatch(value -> value.mm().compareTo(mm) == 0);
  }
}
