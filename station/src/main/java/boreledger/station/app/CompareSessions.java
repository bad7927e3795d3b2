package boreledger.station.app;

import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.Comparing;
import boreledger.station.results.Comparing.NotComparable;
import boreledger.station.results.SessionComparison;
import java.nio.file.Path;
import java.util.List;

/** Finds two sessions and compares them. */
public final class CompareSessions {
  private CompareSessions() {}

  /**
   * Compares two sessions, which may stand in two ledgers.
   *
   * @param before where the first one stands
   * @param after where the second one stands
   */
  public static SessionComparison of(LedgerView before, long first, LedgerView after, long second)
      throws LedgerFault, UsageProblem {
    try {
      return Comparing.of(
          new StoredJobs(before).session(first), new StoredJobs(after).session(second));
    } catch (NotComparable e) {
      throw new UsageProblem(e.getMessage());
    }
  }

  /**
   * Compares two sessions by the files that they stand in.
   *
   * @param before where the first one stands
   * @param after where the second one stands; may be the same
   */
  public static SessionComparison of(Path before, long first, Path after, long second)
      throws LedgerFault, UsageProblem {
    try (LedgerView one = LedgerView.open(before);
        LedgerView other = LedgerView.open(after)) {
      return of(one, first, other, second);
    }
  }

  /** Compares a job's two latest bore sessions. */
  public static SessionComparison latest(LedgerView view, String job)
      throws LedgerFault, UsageProblem {
    List<Long> bores =
        view.sessions().stream()
            .filter(opening -> isOfBores((SessionOpened) opening.body(), job))
            .map(Entry::seq)
            .toList();
    if (bores.size() < 2) {
      throw new UsageProblem(
          "the job \"" + job + "\" has " + bores.size() + " bore sessions here; two are compared");
    }
    return of(view, bores.get(bores.size() - 2), view, bores.get(bores.size() - 1));
  }

  private static boolean isOfBores(SessionOpened opened, String job) {
    return opened.jobName().equals(job) && opened.measure() == Measure.BORE;
  }
}
