package boreledger.station.app;

import boreledger.station.ledger.EntryBody.OfFiling;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Path;

/** Writes an entry into a ledger that is there, whoever has it open. */
@FunctionalInterface
public interface EntryWriter {
  /** Opens the ledger, writes and closes it: for a program that does nothing else with it. */
  EntryWriter BY_ITSELF =
      (ledger, body) -> {
        try (Ledger open = Ledger.open(ledger)) {
          return open.append(body);
        }
      };

  /**
   * Writes an entry.
   *
   * @return its number
   * @throws LedgerFault if it could not be made durable
   * @throws UsageProblem if it cannot be written just now
   */
  long write(Path ledger, OfFiling body) throws LedgerFault, UsageProblem;
}
