package boreledger.station.audit;

import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.StoredRow;
import java.util.Optional;

/** The rows of a ledger by their numbers there. */
@FunctionalInterface
interface Rows {
  /** A row; empty when there is none of that number. */
  Optional<StoredRow> row(long seq) throws LedgerFault;
}
