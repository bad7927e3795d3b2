package boreledger.station.keeping;

import boreledger.station.ledger.ChainReader;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Path;

/**
 * What a ledger file was found to hold, every entry read and its chain followed from the first to
 * the head.
 *
 * @param file its file
 * @param ledgerHead the last entry's hash, in hexadecimal
 */
public record Proof(String file, long entries, String ledgerHead) {
  /**
   * Reads a copy and follows its chain.
   *
   * @param original what it was copied from
   * @param name what the copy goes by in the proof
   * @throws LedgerFault if it cannot be read, or an entry does not follow from the one before
   */
  static Proof of(Path copy, Path original, Path name, Progress progress) throws LedgerFault {
    try (ChainReader chain = ChainReader.open(copy, original)) {
      chain.follow(row -> progress.passed(row.seq()));
      return new Proof(name.toString(), chain.entries(), chain.headHash().toHex());
    }
  }
}
