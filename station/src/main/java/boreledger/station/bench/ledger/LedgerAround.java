package boreledger.station.bench.ledger;

import boreledger.station.app.EntryWriter;
import boreledger.station.app.LedgerBook;
import boreledger.station.bench.look.Surroundings;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;

/**
 * What the room finds around it.
 *
 * @param around what every room finds
 * @param reading runs what a person waits for, one after the other
 * @param working runs what takes long, one after the other
 * @param changed is told when something was corrected
 * @param gauging whether something is being gauged just now
 * @param writer writes corrections, whatever is being gauged
 * @param clock tells the time and the zone it is shown in
 */
public record LedgerAround(
    Surroundings around,
    Executor reading,
    Executor working,
    Runnable changed,
    BooleanSupplier gauging,
    EntryWriter writer,
    Clock clock) {
  /** The ledger's file. */
  Path ledger() {
    return around.workshop().get().ledger();
  }

  /** The ledger to leaf through. */
  LedgerBook book() {
    return new LedgerBook(ledger(), writer);
  }
}
