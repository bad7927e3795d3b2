package boreledger.station.gauging;

import boreledger.station.ledger.EntryBody.OfFiling;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Session;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;

/**
 * What others want written while a run holds the ledger. It may be asked from any thread, and is
 * done on the run's own, between two readings.
 */
final class Errands {
  private final Queue<Errand> waiting = new ArrayDeque<>();
  private boolean over;

  private record Errand(OfFiling body, CompletableFuture<Long> entry) {}

  /** Asks for an entry; the answer is its number, or a {@link LedgerFault}. */
  synchronized CompletableFuture<Long> ask(OfFiling body) {
    Errand errand = new Errand(body, new CompletableFuture<>());
    if (over) {
      refuse(errand);
    } else {
      waiting.add(errand);
    }
    return errand.entry();
  }

  /** Does what was asked so far. */
  void run(Session session) {
    for (Errand errand = next(); errand != null; errand = next()) {
      try {
        errand.entry().complete(session.keep(errand.body()));
      } catch (LedgerFault e) {
        // The run itself goes on: whoever asked is told, and a full disk meets the next reading.
        errand.entry().completeExceptionally(e);
      }
    }
  }

  /** Refuses what is not done yet, and whatever is asked from now on. */
  synchronized void end() {
    over = true;
    waiting.forEach(Errands::refuse);
    waiting.clear();
  }

  private synchronized Errand next() {
    return waiting.poll();
  }

  private static void refuse(Errand errand) {
    errand
        .entry()
        .completeExceptionally(new LedgerFault("the gauging ended just now; nothing was written"));
  }
}
