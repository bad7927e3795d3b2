package boreledger.station.keeping;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerAside;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** Makes a ledger from a backup. */
public final class Restore {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  private final Backup backup;
  private final Path from;
  private final Clock clock;

  /**
   * From a backup.
   *
   * @param from the backup's file
   */
  public Restore(Path from, Clock clock) {
    this.from = from;
    this.backup = new Backup(from);
    this.clock = clock;
  }

  /**
   * What was restored.
   *
   * @param restored the ledger as it was found to be
   * @param kept where the ledger went that stood there before; null when there was none
   */
  public record Restored(Proof restored, String kept) {
    /** In a sentence or two. */
    public String words() {
      String words =
          "Restored "
              + restored.entries()
              + " entries into "
              + restored.file()
              + ", head "
              + restored.ledgerHead();
      return kept == null ? words : words + "\nThe ledger that was there is now " + kept;
    }
  }

  /** Stops the work soon. Any thread may ask for it. */
  public void stop() {
    backup.stop();
  }

  /**
   * Restores. The backup's chain is followed to its head before anything is put in place.
   *
   * @param replace whether a ledger that is there may be put aside
   * @throws LedgerFault if the backup is damaged, or a program has the old ledger open; all stays
   *     as it was then
   */
  public Restored into(Path ledger, boolean replace, Progress progress)
      throws LedgerFault, UsageProblem, FileProblem {
    boolean old = Files.exists(ledger);
    if (old && !replace) {
      throw new UsageProblem(
          ledger + ": is there already; name another file, or put it aside with --replace");
    }
    if (!old) {
      Backup.refuseBesideLog(ledger);
    }
    try (FreshFile file = FreshFile.at(ledger, replace, from)) {
      Proof proof = backup.proven(file.draft(), ledger, progress);
      Path kept = old ? aside(ledger) : null;
      file.put();
      return new Restored(proof, kept == null ? null : kept.toString());
    }
  }

  private Path aside(Path ledger) throws LedgerFault {
    Path kept = Path.of(ledger + ".until-" + STAMP.format(clock.instant()));
    LedgerAside.move(ledger, kept);
    return kept;
  }
}
