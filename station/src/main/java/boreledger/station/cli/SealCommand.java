package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.TextFile;
import boreledger.station.app.Sealing;
import boreledger.station.app.UsageProblem;
import boreledger.station.audit.AuditReport;
import boreledger.station.audit.AuditStopped;
import boreledger.station.audit.AuditText;
import boreledger.station.audit.LedgerAudit;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.seal.KeyFile;
import boreledger.station.seal.KeyProblem;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Signs a ledger's head. */
@Command(
    name = "seal",
    description =
        "Signs everything in a ledger so far, in the ledger and in a file to keep elsewhere.",
    footer = {
      "",
      "The ledger is audited first; one with findings is not sealed. The key is made on first use.",
      "Keep the seal file, or print its line, where the ledger is not: only then does it show that",
      "the end was cut off or all of it was written anew.",
      "Example: boreledger seal --ledger bench.db --name \"A. Turner\""
    })
final class SealCommand implements Callable<Integer> {
  private static final int MOST_PASSPHRASE_BYTES = 4096;

  @ParentCommand private Boreledger program;
  @Mixin private Answer answer;
  @Mixin private LedgerOption ledger;

  @Option(
      names = "--name",
      required = true,
      paramLabel = "WHO",
      description = "Who signs, up to 80 characters.")
  private String name;

  @Option(
      names = "--key",
      paramLabel = "FILE",
      description = "The key file; without it your own in your settings folder.")
  private Path key;

  @Option(
      names = "--passphrase-file",
      paramLabel = "FILE",
      description = "A file whose first line is the key's passphrase.")
  private Path passphraseFile;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where the seal goes; without it beside the ledger.")
  private Path out;

  /**
   * The answer.
   *
   * @param entry the seal's own entry
   * @param sealedEntry the last entry that it covers
   * @param file where the seal stands
   * @param line the same in one line
   * @param keyFile where the key stands
   * @param keyIsNew whether it was made now
   */
  record Answered(
      long entry,
      long sealedEntry,
      String head,
      String name,
      String key,
      String file,
      String line,
      String keyFile,
      boolean keyIsNew) {}

  @Override
  public Integer call() throws FileProblem, UsageProblem, KeyProblem, LedgerFault {
    KeyFile keyFile = key == null ? KeyFile.own() : new KeyFile(key);
    Sealing sealing = new Sealing(ledger.path(), name, keyFile, passphrase(), out);
    sealing.check();
    try {
      AuditReport report = audit();
      if (!report.intact()) {
        answer.tell(ledger.path() + ": not sealed, the audit has findings:");
        answer.tell(AuditText.of(report));
        return ExitStatus.ATTENTION;
      }
      Sealing.Done done = sealing.seal(report.head(), Clock.systemUTC());
      answer.print(answered(done), done.words());
      return ExitStatus.DONE;
    } catch (AuditStopped e) {
      answer.tell(e.getMessage());
      return ExitStatus.ATTENTION;
    }
  }

  private AuditReport audit() throws LedgerFault, AuditStopped {
    LedgerView.open(ledger.path()).close();
    AuditLines lines = new AuditLines(answer, System.console() != null);
    program.interruption().stopBy(lines::stop);
    return LedgerAudit.of(ledger.path(), Map.of(), Set.of(), lines);
  }

  private static Answered answered(Sealing.Done done) {
    return new Answered(
        done.entry(),
        done.seal().entry(),
        done.seal().head().toHex(),
        done.seal().name(),
        done.seal().keyText(),
        done.file().toString(),
        done.seal().line(),
        done.keyFile().toString(),
        done.keyIsNew());
  }

  private char[] passphrase() throws FileProblem, UsageProblem {
    if (passphraseFile == null) {
      return null;
    }
    String line =
        TextFile.read(passphraseFile, MOST_PASSPHRASE_BYTES).text().lines().findFirst().orElse("");
    if (line.isEmpty()) {
      throw new UsageProblem(passphraseFile + ": its first line is empty, expected a passphrase");
    }
    return line.toCharArray();
  }
}
