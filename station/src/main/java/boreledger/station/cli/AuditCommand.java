package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.TextFile;
import boreledger.drivers.line.Bytes;
import boreledger.station.audit.AuditReport;
import boreledger.station.audit.AuditStopped;
import boreledger.station.audit.AuditText;
import boreledger.station.audit.LedgerAudit;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.seal.KeyFile;
import boreledger.station.seal.KeyProblem;
import boreledger.station.seal.Seal;
import boreledger.station.seal.Seal.NoSeal;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Checks a ledger. */
@Command(
    name = "audit",
    description = "Checks a ledger's file, chain and seals, and computes everything in it again.",
    footer = {
      "",
      "Exit status 1 means that there are findings, or that it was stopped before its end.",
      "Example: boreledger audit --ledger bench.db --seal bench.db-51.seal"
    })
final class AuditCommand implements Callable<Integer> {
  private static final int MOST_SEAL_BYTES = 4096;

  @ParentCommand private Boreledger program;
  @Mixin private Answer answer;
  @Mixin private LedgerOption ledger;

  @Option(
      names = "--seal",
      paramLabel = "FILE",
      description = "A seal that was kept elsewhere; may be given several times.")
  private List<Path> seals = List.of();

  @Option(
      names = "--key",
      paramLabel = "FILE",
      description = "A public key that you trust; may be given several times. Yours is known.")
  private List<Path> keys = List.of();

  @Override
  public Integer call() throws FileProblem, KeyProblem, LedgerFault {
    Map<String, Seal> given = new LinkedHashMap<>();
    for (Path file : seals) {
      given.put(file.toString(), seal(file));
    }
    Set<Bytes> known = known();
    AuditLines lines = new AuditLines(answer, System.console() != null);
    program.interruption().stopBy(lines::stop);
    try {
      AuditReport report = LedgerAudit.of(ledger.path(), given, known, lines);
      answer.print(report, AuditText.of(report));
      return ExitStatus.attentionIf(!report.intact());
    } catch (AuditStopped e) {
      answer.tell(e.getMessage());
      return ExitStatus.ATTENTION;
    }
  }

  private Set<Bytes> known() throws KeyProblem {
    Set<Bytes> known = new HashSet<>();
    for (Path file : keys) {
      known.add(new KeyFile(file).readOpen());
    }
    if (KeyFile.own().exists()) {
      known.add(KeyFile.own().readOpen());
    }
    return known;
  }

  private static Seal seal(Path file) throws FileProblem {
    TextFile text = TextFile.read(file, MOST_SEAL_BYTES);
    try {
      return Seal.parse(text.text());
    } catch (NoSeal e) {
      throw FileProblem.of(file.toString(), e.getMessage(), e);
    }
  }
}
