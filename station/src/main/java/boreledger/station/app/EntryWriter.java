package boreledger.station.app;

import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Path;
import java.util.List;

/** Writes entries into a ledger that is there, whoever has it open. */
@FunctionalInterface
public interface EntryWriter {
  /** Opens the ledger, writes and closes it: for a program that does nothing else with it. */
  EntryWriter BY_ITSELF =
      (ledger, bodies) -> {
        try (Ledger open = Ledger.open(ledger)) {
          return open.append(bodies);
        }
      };

  /**
   * Writes entries, all or none.
   *
   * @return the number of the last one
   * @throws LedgerFault if they could not be made durable
   * @throws UsageProblem if they cannot be written just now
   */
  long write(Path ledger, List<EntryBody> bodies) throws LedgerFault, UsageProblem;
}
