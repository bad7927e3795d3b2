package boreledger.station.keeping;

/**
 * The words of the JSON export, {@value #NAME}: one object with these keys in this order.
 *
 * <ul>
 *   <li>{@code format}: the name
 *   <li>{@code ledger}: the ledger's id, as its first entry has it
 *   <li>{@code entries}: how many there are
 *   <li>{@code head}: the last entry's hash, in hexadecimal
 *   <li>{@code chain}: every entry from the first to the last, an object with {@code seq}, {@code
 *       hash} in hexadecimal, and {@code body}, the stored JSON text as a string
 * </ul>
 *
 * <p>The hashes follow from the bodies alone, as the page of {@link boreledger.station.ledger} lays
 * down.
 */
final class ExportFormat {
  static final String NAME = "boreledger-export/1";
  static final String FORMAT = "format";
  static final String LEDGER = "ledger";
  static final String ENTRIES = "entries";
  static final String HEAD = "head";
  static final String CHAIN = "chain";
  static final String SEQ = "seq";
  static final String HASH = "hash";
  static final String BODY = "body";

  private ExportFormat() {}
}
