package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;

/**
 * An entry as it is stored, its body unread.
 *
 * @param seq its number, from 1
 * @param body its JSON, character by character
 * @param hash its link in the chain, 32 bytes
 */
public record ChainRow(long seq, String body, Bytes hash) {
  /**
   * What the body says.
   *
   * @throws LedgerFault if this program cannot read it
   */
  public EntryBody read() throws LedgerFault {
    return EntryJson.read(seq, body);
  }

  /** The number of the session that it belongs to; null when it belongs to none. */
  public Long session() throws LedgerFault {
    return EntryJson.sessionOf(seq, body);
  }
}
