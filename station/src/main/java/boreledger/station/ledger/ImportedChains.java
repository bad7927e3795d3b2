package boreledger.station.ledger;

import boreledger.station.ledger.EntryBody.Imported;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Follows the chains of other ledgers whose entries were imported, as they go by in this ledger's
 * own. Whoever checks the ledger hands in every entry in its order.
 */
public final class ImportedChains {
  private final Map<String, Head> heads = new HashMap<>();
  private final List<Entry> imports = new ArrayList<>();
  private Imported current;
  private long opening;
  private long left;

  /**
   * Takes the next entry of this ledger, of any kind.
   *
   * @param seq its number
   * @return what is wrong with what was imported; empty when nothing is
   */
  public Optional<String> accept(long seq, EntryBody body) {
    if (body instanceof ImportedEntry imported) {
      return Optional.ofNullable(continued(imported));
    }
    String cutShort = left > 0 ? left + " entries of the import before are missing" : null;
    left = 0;
    if (body instanceof Imported begun) {
      imports.add(new Entry(seq, body, Chain.ORIGIN));
      current = begun;
      opening = seq;
      left = begun.entries();
      if (begun.first() != head().seq() + 1) {
        return Optional.of("the import does not go on where the one before ended");
      }
    }
    return Optional.ofNullable(cutShort);
  }

  /**
   * To be asked after the last entry.
   *
   * @return what is wrong; empty when nothing is
   */
  public Optional<String> ended() {
    return left > 0
        ? Optional.of(left + " entries of the last import are missing")
        : Optional.empty();
  }

  private String continued(ImportedEntry imported) {
    if (left == 0 || imported.imported() != opening) {
      return "the imported entry belongs to no import";
    }
    left--;
    Head next = head().next(imported.body());
    heads.put(current.ledger(), next);
    if (imported.number() != next.seq() || !imported.hash().equals(next.hash().toHex())) {
      return "the imported entry " + imported.number() + " does not follow from the one before it";
    }
    if (left == 0 && !current.head().equals(imported.hash())) {
      return "the import does not end with the head that it names";
    }
    return session(imported);
  }

  /** The session that the wrapping names must be the one that the imported body names. */
  private String session(ImportedEntry imported) {
    try {
      ImportNumbers numbers = ImportNumbers.of(imports, current.ledger());
      Long named = EntryJson.sessionOf(imported.number(), imported.body());
      Long expected = named == null ? null : Long.valueOf(numbers.own(named));
      return Objects.equals(expected, imported.session())
          ? null
          : "the imported entry names session " + imported.session() + ", must be " + expected;
    } catch (LedgerFault e) {
      return e.getMessage();
    }
  }

  private Head head() {
    return heads.getOrDefault(current.ledger(), Head.NONE);
  }
}
