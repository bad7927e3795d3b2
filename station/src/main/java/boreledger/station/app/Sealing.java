package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.seal.KeyFile;
import boreledger.station.seal.KeyProblem;
import boreledger.station.seal.Seal;
import boreledger.station.seal.SealKey;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Locale;
import java.util.Set;

/**
 * Signs a ledger's head after an audit, in the ledger and in a file to keep elsewhere.
 *
 * @param name who signs
 * @param keyFile the key; it is made when it is not there yet
 * @param passphrase the key's passphrase; null for none
 * @param out where the seal goes; null for beside the ledger
 */
public record Sealing(Path ledger, String name, KeyFile keyFile, char[] passphrase, Path out) {
  /**
   * What was done.
   *
   * @param entry the seal's own entry
   * @param file where the seal stands
   * @param keyIsNew whether the key was made now
   */
  public record Done(long entry, Seal seal, Path file, Path keyFile, boolean keyIsNew) {
    /** The same in words. */
    public String words() {
      return String.format(
          Locale.ROOT,
          "Sealed up to entry %d by %s; the seal is entry %d and stands in %s.%n"
              + "Keep that file where the ledger is not. As a line:%n%s%n"
              + "Key: %s, in %s%s.",
          seal.entry(),
          seal.name(),
          entry,
          file,
          seal.line(),
          seal.keyText(),
          keyFile,
          keyIsNew ? ", made now; keep a copy of it in a safe place" : "");
    }
  }

  /**
   * Refuses, before a long audit, what could not be sealed after it.
   *
   * @throws UsageProblem if the name is none, or the file is there already
   */
  public void check() throws UsageProblem {
    if (!Seal.isName(name)) {
      throw new UsageProblem(
          "--name: expected 1 to " + Seal.LONGEST_NAME + " characters in one line, found " + name);
    }
    refuseIfThere(out);
  }

  /**
   * Seals.
   *
   * @param auditedHead the head of the ledger that was audited and found intact, in hexadecimal
   * @throws LedgerFault if the ledger is not any more what was audited
   */
  public Done seal(String auditedHead, Clock clock)
      throws FileProblem, UsageProblem, KeyProblem, LedgerFault {
    boolean keyIsNew = !keyFile.exists();
    SealKey key = keyIsNew ? keyFile.make(passphrase) : keyFile.read(passphrase);
    try (Ledger open = Ledger.open(ledger);
        LedgerView view = open.view()) {
      if (!open.headHash().toHex().equals(auditedHead)) {
        throw new LedgerFault(
            ledger + ": another program wrote to this ledger meanwhile; seal it again");
      }
      Seal seal = key.seal(view.id(), open.headSeq(), open.headHash(), clock.instant(), name);
      Path file = out == null ? Path.of(ledger + "-" + seal.entry() + ".seal") : out;
      refuseIfThere(file);
      long entry = open.append(seal.kept());
      write(file, seal, entry);
      return new Done(entry, seal, file, keyFile.path(), keyIsNew);
    }
  }

  /** The public keys that a person trusts: their own, once it is there. */
  public static Set<Bytes> known(KeyFile own) throws KeyProblem {
    return own.exists() ? Set.of(own.readOpen()) : Set.of();
  }

  private static void refuseIfThere(Path file) throws UsageProblem {
    if (file != null && Files.exists(file)) {
      throw new UsageProblem(file + ": is there already; name another file with --out");
    }
  }

  private static void write(Path file, Seal seal, long entry) throws FileProblem {
    try {
      Files.writeString(file, seal.text(), StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      String what =
          "could not be written; the seal stands in the ledger as entry " + entry + ", as a line: ";
      throw FileProblem.of(file.toString(), what + seal.line(), e);
    }
  }
}
