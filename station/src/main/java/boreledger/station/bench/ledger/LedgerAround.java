package boreledger.station.bench.ledger;

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
 * @param changed is told when readings were taken back or restored
 * @param gauging whether something is being gauged just now
 * @param clock tells the time and the zone it is shown in
 */
public record LedgerAround(
    Surroundings around,
    Executor reading,
    Executor working,
    Runnable changed,
    BooleanSupplier gauging,
    Clock clock) {
  /** The ledger's file. */
  Path ledger() {
    return around.workshop().get().ledger();
  }

  /** The ledger to leaf through. */
  LedgerBook book() {
    return new LedgerBook(ledger());
  }
}
