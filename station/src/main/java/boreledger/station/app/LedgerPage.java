package boreledger.station.app;

import java.util.List;

/**
 * A part of a long list.
 *
 * @param more whether the ledger has more beyond it
 */
public record LedgerPage<T>(List<T> lines, boolean more) {
  /** Takes a copy of the list. */
  public LedgerPage {
    lines = List.copyOf(lines);
  }
}
