package boreledger.station.audit;

import boreledger.drivers.line.Bytes;
import boreledger.station.app.StoredJobs;
import boreledger.station.ledger.ImportedChains;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerFile;
import boreledger.station.ledger.LedgerView;
import boreledger.station.ledger.StoredRow;
import boreledger.station.seal.Seal;
import boreledger.station.session.Version;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks a ledger from its bytes up: the file, the chain, the seals, and everything that was
 * computed. Entries are read one after the other, so that memory does not grow with the ledger.
 */
public final class LedgerAudit {
  private static final double NS_PER_S = 1e9;

  private final Path path;
  private final LedgerFile file;
  private final AuditProgress progress;
  private final Remarks remarks = new Remarks();
  private final ChainWalk chain = new ChainWalk(remarks);
  private final ImportedChains imported = new ImportedChains();
  private final CorrectionsAudit corrections;
  private final SessionsAudit sessions;
  private final SealsAudit seals;
  private final ContentsAudit contents;
  private long entries;

  private LedgerAudit(
      Path path, LedgerFile file, Set<Bytes> knownKeys, AuditProgress progress, Instant now) {
    this.path = path;
    this.file = file;
    this.progress = progress;
    Shelf shelf = new Shelf(file::row, imported);
    this.corrections = new CorrectionsAudit(file::row, imported, shelf);
    this.sessions = new SessionsAudit(shelf, corrections, remarks);
    this.seals = new SealsAudit(file::row, imported, knownKeys, remarks);
    this.contents = new ContentsAudit(file::row, imported, shelf, sessions, seals, remarks, now);
  }

  /**
   * Audits a ledger.
   *
   * @param sealFiles seals that were kept elsewhere, by where they come from
   * @param knownKeys the public keys that the reader trusts
   * @throws LedgerFault if the ledger is missing or no SQLite file with entries
   * @throws AuditStopped if the progress said so
   */
  public static AuditReport of(
      Path path, Map<String, Seal> sealFiles, Set<Bytes> knownKeys, AuditProgress progress)
      throws LedgerFault, AuditStopped {
    return of(path, sealFiles, knownKeys, progress, Instant.now());
  }

  /** Audits a ledger at a moment. */
  static AuditReport of(
      Path path,
      Map<String, Seal> sealFiles,
      Set<Bytes> knownKeys,
      AuditProgress progress,
      Instant now)
      throws LedgerFault, AuditStopped {
    long startNs = System.nanoTime();
    try (LedgerFile file = LedgerFile.open(path)) {
      LedgerAudit audit = new LedgerAudit(path, file, knownKeys, progress, now);
      audit.file();
      audit.entries();
      audit.sealsKeptElsewhere(sealFiles);
      List<String> resultsOf = audit.results();
      return audit.report(resultsOf, (System.nanoTime() - startNs) / NS_PER_S);
    }
  }

  private void file() {
    try {
      file.schemaFaults().forEach(fault -> remarks.finding(null, fault));
      file.integrityFaults()
          .forEach(fault -> remarks.finding(null, "SQLite's own check: " + fault));
    } catch (LedgerFault e) {
      remarks.finding(null, e.getMessage());
    }
  }

  private void entries() throws AuditStopped {
    boolean[] stopped = new boolean[1];
    long of = count();
    try {
      file.rows(
          row -> {
            entry(row);
            stopped[0] = !progress.at(entries, of);
            return !stopped[0];
          });
    } catch (LedgerFault e) {
      remarks.finding(null, "after entry " + chain.seq() + ": " + e.getMessage());
      return;
    }
    if (stopped[0]) {
      throw new AuditStopped(entries, of);
    }
    imported.ended().ifPresent(wrong -> remarks.finding(null, wrong));
    if (entries == 0) {
      remarks.finding(null, "there is no entry at all; every ledger begins with one");
    }
  }

  /** How many entries there are; 0 where a damage keeps them from being counted. */
  private long count() {
    try {
      return file.count();
    } catch (LedgerFault e) {
      remarks.finding(null, "the entries cannot be counted: " + e.getMessage());
      return 0;
    }
  }

  private void entry(StoredRow row) {
    entries++;
    chain.accept(row);
    try {
      contents.accept(row);
    } catch (LedgerFault e) {
      remarks.finding(row.seq(), e.getMessage());
    } catch (RuntimeException e) {
      // What an entry lacks shows wherever it is first asked for.
      remarks.finding(row.seq(), "what it says cannot be: " + e);
    }
  }

  private void sealsKeptElsewhere(Map<String, Seal> sealFiles) {
    for (Map.Entry<String, Seal> each : sealFiles.entrySet()) {
      try {
        seals.elsewhere(each.getKey(), each.getValue());
      } catch (LedgerFault e) {
        remarks.finding(null, e.getMessage());
      }
    }
  }

  /** Computes the results of every job from the sessions that count. */
  private List<String> results() {
    List<String> done = new ArrayList<>();
    try (LedgerView view = LedgerView.open(path)) {
      for (Map.Entry<String, List<Long>> job : CountingSessions.of(view).entrySet()) {
        if (results(view, job.getKey(), job.getValue())) {
          done.add(job.getKey());
        }
      }
    } catch (LedgerFault | RuntimeException e) {
      remarks.finding(null, "no results can be computed again: " + e.getMessage());
    }
    return done;
  }

  private boolean results(LedgerView view, String job, List<Long> counting) {
    try {
      new StoredJobs(view).results(counting);
      return true;
    } catch (LedgerFault | RuntimeException e) {
      remarks.finding(
          null, "the results of " + job + " cannot be computed again: " + e.getMessage());
      return false;
    }
  }

  private AuditReport report(List<String> resultsOf, double seconds) {
    return new AuditReport(
        entries,
        remarks.findingsInAll() == 0,
        remarks.findings(),
        remarks.findingsInAll(),
        remarks.notices(),
        remarks.noticesInAll(),
        sessions.tally().recomputed(),
        sessions.tally().differing(),
        resultsOf,
        chain.hash().toHex(),
        seals.seen(chain.seq()),
        corrections.struck(),
        corrections.corrected(),
        sessions.changes().list(),
        sessions.changes().inAll(),
        sessions.programs(),
        Version.PROGRAM,
        seconds);
  }
}
