package boreledger.station.keeping;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerCopy;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;

/** Copies of a ledger, taken while it may be in use, and brought back. */
public final class Backup {
  private final Path from;
  private final LedgerCopy copy;

  /**
   * A copy of a file.
   *
   * @param from a ledger, or a backup of one
   */
  public Backup(Path from) {
    this.from = from;
    this.copy = new LedgerCopy(from);
  }

  /** Stops the copying soon. Any thread may ask for it. */
  public void stop() {
    copy.stop();
  }

  /**
   * Backs up.
   *
   * @param replace whether a file that is there may be overwritten
   * @return what the copy was found to hold
   * @throws LedgerFault if there is no ledger, it cannot be read, or its chain is broken; no copy
   *     is left then
   */
  public Proof into(Path out, boolean replace, Progress progress)
      throws LedgerFault, UsageProblem, FileProblem {
    try (FreshFile file = FreshFile.at(out, replace, from)) {
      refuseBesideLog(out);
      Proof proof = proven(file.draft(), out, progress);
      file.put();
      return proof;
    }
  }

  /** Copies and follows the copy's chain. */
  Proof proven(Path draft, Path name, Progress progress) throws LedgerFault {
    try {
      copy.make(draft);
    } catch (CancellationException e) {
      throw new Stopped();
    }
    return Proof.of(draft, from, name, progress);
  }

  /** A log that stands beside a file is taken for that file's own, whatever file that is. */
  static void refuseBesideLog(Path out) throws UsageProblem {
    Path log = Path.of(out + "-wal");
    if (Files.exists(log)) {
      throw new UsageProblem(
          log + ": is the log of a ledger that is open or was not closed; name another file");
    }
  }
}
