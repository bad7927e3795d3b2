package boreledger.station.bench.ledger;

import boreledger.station.audit.AuditReport;
import boreledger.station.audit.AuditText;
import boreledger.station.audit.Remark;
import boreledger.station.bench.words.LedgerText;
import java.util.ArrayList;
import java.util.List;

/**
 * A line of an audit's report.
 *
 * @param kind what it is
 * @param words without it
 */
public record AuditLine(Kind kind, String words) {
  /** What a line is. */
  public enum Kind {
    /** What an untouched ledger never has. */
    FINDING,
    /** What can be in an honest ledger. */
    NOTICE,
    /** Anything else. */
    FACT
  }

  /** What is said over the lines: the same as the command says first. */
  static String heading(AuditReport report) {
    return AuditText.of(report).lines().findFirst().orElse("");
  }

  static List<AuditLine> of(AuditReport report) {
    List<AuditLine> lines = new ArrayList<>();
    add(Kind.FINDING, report.findings(), report.findingsInAll(), lines);
    add(Kind.NOTICE, report.notices(), report.noticesInAll(), lines);
    AuditText.of(report.withoutRemarks())
        .lines()
        .skip(1)
        .filter(line -> !line.isBlank())
        .forEach(line -> lines.add(new AuditLine(Kind.FACT, line)));
    return lines;
  }

  private static void add(Kind kind, List<Remark> remarks, long inAll, List<AuditLine> lines) {
    for (Remark remark : remarks) {
      String words =
          remark.entry() == null
              ? LedgerText.REMARK_FILE.with(remark.what())
              : LedgerText.REMARK_ENTRY.with(Long.toString(remark.entry()), remark.what());
      lines.add(new AuditLine(kind, words));
    }
    if (inAll > remarks.size()) {
      String rest = Long.toString(inAll - remarks.size());
      lines.add(new AuditLine(kind, LedgerText.REMARKS_MORE.with(rest)));
    }
  }
}
