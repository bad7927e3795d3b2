package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * A row as it is stored, right or wrong.
 *
 * @param body the bytes of the body; empty when there are none
 * @param hash the stored hash; empty when there is none
 */
public record StoredRow(long seq, Bytes body, Bytes hash) {
  /** The hash that follows from the body and the hash before it. */
  public Bytes link(Bytes previousHash) {
    return Chain.link(previousHash, seq, body);
  }

  /**
   * What the entry says.
   *
   * @throws LedgerFault if it is not what this program writes
   */
  public EntryBody read() throws LedgerFault {
    return EntryJson.readStrictly(seq, text());
  }

  private String text() throws LedgerFault {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(body.toArray())).toString();
    } catch (CharacterCodingException e) {
      throw new LedgerFault("entry " + seq + " of the ledger is not readable: no UTF-8", e);
    }
  }
}
