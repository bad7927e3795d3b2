package boreledger.station.audit;

import java.util.List;
import java.util.Locale;

/** An audit's report in words for people. */
public final class AuditText {
  private AuditText() {}

  /** The whole report. */
  public static String of(AuditReport report) {
    StringBuilder text = new StringBuilder();
    text.append(report.intact() ? intact(report) : found(report)).append("\n\n");
    text.append("Head: ").append(report.head()).append('\n');
    text.append(counts(report)).append('\n');
    remarks("Findings", report.findings(), report.findingsInAll(), text);
    remarks("Notices", report.notices(), report.noticesInAll(), text);
    for (SealSeen seal : report.seals()) {
      text.append(seal(seal)).append('\n');
    }
    for (StruckReading struck : report.takenBack()) {
      text.append(struck(struck)).append('\n');
    }
    for (CorrectedEntry corrected : report.corrected()) {
      text.append(corrected(corrected)).append('\n');
    }
    otherwiseNow(report, text);
    if (report.seals().isEmpty()) {
      text.append(
          "Not sealed: a chain alone cannot show that its end was cut off or all of it was written"
              + " anew. Compare the head with one that was kept elsewhere.\n");
    }
    return text.toString();
  }

  private static String intact(AuditReport report) {
    return String.format(
        Locale.ROOT,
        "Intact: %d entries, each as it was written, and every value comes out again.",
        report.entries());
  }

  private static String found(AuditReport report) {
    return String.format(
        Locale.ROOT,
        "Not intact: %d findings in %d entries. Do not rely on it; look for a copy kept elsewhere.",
        report.findingsInAll(),
        report.entries());
  }

  private static String counts(AuditReport report) {
    return String.format(
        Locale.ROOT,
        "Readings computed again: %d, differing: %d. Written by program %s, checked by %s in %.1f s.",
        report.recomputed(),
        report.differing(),
        report.programs().isEmpty() ? "none" : String.join(", ", report.programs()),
        report.program(),
        report.seconds());
  }

  private static void remarks(String title, List<Remark> remarks, long inAll, StringBuilder text) {
    if (remarks.isEmpty()) {
      return;
    }
    text.append('\n').append(title).append(":\n");
    for (Remark remark : remarks) {
      String where = remark.entry() == null ? "file" : "entry " + remark.entry();
      text.append("  ")
          .append(where)
          .append(": ")
          .append(underEachOther(remark.what()))
          .append('\n');
    }
    if (inAll > remarks.size()) {
      text.append("  and ").append(inAll - remarks.size()).append(" more\n");
    }
    text.append('\n');
  }

  /** Two hashes are compared more easily when they stand one above the other. */
  private static String underEachOther(String what) {
    return what.replace(": computed ", ":\n    computed ").replace(", stored ", "\n    stored   ");
  }

  private static String seal(SealSeen seal) {
    return String.format(
        Locale.ROOT,
        "Sealed by %s on %s up to entry %d (%s): %s, key %s, %d entries later.",
        seal.name(),
        seal.time(),
        seal.entry(),
        seal.from(),
        seal.holds() ? "holds" : "does not hold",
        seal.known() ? "known" : "not known",
        seal.entriesAfter());
  }

  private static String struck(StruckReading struck) {
    return String.format(
        Locale.ROOT,
        "Taken back: entry %d, %s, %+.4f mm, by entry %d: %s%s.",
        struck.entry(),
        struck.position(),
        struck.valueMm(),
        struck.by(),
        struck.why(),
        struck.who() == null ? "" : " (" + struck.who() + ")");
  }

  private static String corrected(CorrectedEntry corrected) {
    return String.format(
        Locale.ROOT,
        "Corrected: %s By entry %d: %s (%s%s).",
        corrected.what(),
        corrected.entry(),
        corrected.why(),
        corrected.who() == null ? "" : corrected.who() + ", ",
        corrected.wall());
  }

  /** What rules changed is no damage: both figures stand beside each other. */
  private static void otherwiseNow(AuditReport report, StringBuilder text) {
    if (report.otherwiseNow().isEmpty()) {
      return;
    }
    ThenAndNow first = report.otherwiseNow().get(0);
    text.append(
        String.format(
            Locale.ROOT,
            "%nOther rules then, so %d figures would come out otherwise now. Nobody altered them."
                + "%n  program %s: %s%n  program %s: %s%n",
            report.otherwiseNowInAll(),
            first.programThen(),
            first.rulesThen(),
            first.programNow(),
            first.rulesNow()));
    for (ThenAndNow each : report.otherwiseNow()) {
      text.append("  ").append(each.words()).append('\n');
    }
    long more = report.otherwiseNowInAll() - report.otherwiseNow().size();
    if (more > 0) {
      text.append("  and ").append(more).append(" more\n");
    }
  }
}
