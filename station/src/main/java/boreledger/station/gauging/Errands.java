package boreledger.station.gauging;

import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.OfFiling;
import boreledger.station.ledger.EntryBody.OfSession;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Session;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.function.LongPredicate;

/**
 * What others want written while a run holds the ledger. It may be asked from any thread, and is
 * done on the run's own, between two readings.
 */
final class Errands {
  private final Queue<Errand> waiting = new ArrayDeque<>();
  private boolean over;

  private record Errand(List<EntryBody> bodies, CompletableFuture<Long> entry) {}

  /** Asks for entries; the answer is the last one's number, or a {@link LedgerFault}. */
  synchronized CompletableFuture<Long> ask(List<EntryBody> bodies) {
    Errand errand = new Errand(List.copyOf(bodies), new CompletableFuture<>());
    if (over) {
      refuse(errand);
    } else {
      waiting.add(errand);
    }
    return errand.entry();
  }

  /**
   * Does what was asked so far.
   *
   * @param session whose ledger is written
   * @param gauged the sessions that are open just now: they hold what stands in them in memory, so
   *     that a correction from outside is refused
   */
  void run(Session session, LongPredicate gauged) {
    for (Errand errand = next(); errand != null; errand = next()) {
      try {
        refuseCorrection(errand.bodies(), gauged);
        errand.entry().complete(session.keep(errand.bodies()));
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

  private static void refuseCorrection(List<EntryBody> bodies, LongPredicate gauged)
      throws LedgerFault {
    for (EntryBody body : bodies) {
      if (body instanceof OfSession said
          && !(body instanceof OfFiling)
          && gauged.test(said.session())) {
        throw new LedgerFault(
            "session " + said.session() + " is being gauged; end or stop it at the bench first");
      }
    }
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
