package boreledger.station.ledger;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.EntryBody.Imported;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.EntryBody.LedgerMade;
import boreledger.station.ledger.EntryBody.OfSession;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Follows the chains of other ledgers whose entries were imported, as they go by in this ledger's
 * own, and those of ledgers that these had imported in turn. Whoever checks the ledger hands in
 * every entry in its order. Each break is told once.
 */
public final class ImportedChains {
  private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

  private final Map<String, Head> heads = new HashMap<>();
  private final Map<String, ImportedChains> within = new HashMap<>();
  private final List<Entry> imports = new ArrayList<>();
  private Imported current;
  private ImportNumbers numbers;
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
      numbers = numbers(begun.ledger());
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
    if (left > 0) {
      return Optional.of(left + " entries of the last import are missing");
    }
    return within.entrySet().stream()
        .flatMap(
            each -> each.getValue().ended().map(wrong -> inside(each.getKey(), wrong)).stream())
        .findFirst();
  }

  /** Which numbers the entries of another ledger have here, as far as they went by. */
  public ImportNumbers numbers(String ledger) {
    return ImportNumbers.of(imports, ledger);
  }

  /**
   * The id of the ledger that an imported entry came from.
   *
   * @throws LedgerFault if it belongs to no import
   */
  public String ledgerOf(long seq, ImportedEntry imported) throws LedgerFault {
    return new ImportedReading(imports).ledger(seq, imported);
  }

  /** The chains that another ledger had imported, as far as they went by. */
  public ImportedChains within(String ledger) {
    return within.computeIfAbsent(ledger, id -> new ImportedChains());
  }

  /**
   * What a row says: an imported one as if it had been written in this ledger.
   *
   * @throws LedgerFault if it is not what this program writes, or belongs to no import
   */
  public EntryBody read(StoredRow row) throws LedgerFault {
    return new ImportedReading(imports).of(new Entry(row.seq(), row.read(), row.hash())).body();
  }

  private String continued(ImportedEntry imported) {
    if (left == 0 || imported.imported() != opening) {
      return "the imported entry belongs to no import";
    }
    left--;
    Head next = head().next(imported.body());
    boolean hash = HASH.matcher(imported.hash()).matches();
    heads.put(
        current.ledger(), hash ? new Head(imported.number(), Bytes.ofHex(imported.hash())) : next);
    if (imported.number() != next.seq()) {
      return named(imported) + " follows entry " + (next.seq() - 1) + " of it";
    }
    if (!imported.hash().equals(next.hash().toHex())) {
      return named(imported)
          + " has a hash that does not follow from its body and the entry before: computed "
          + next.hash()
          + ", stored "
          + imported.hash();
    }
    if (left == 0 && !current.head().equals(imported.hash())) {
      return "the import does not end with the head that it names";
    }
    return content(imported);
  }

  private String content(ImportedEntry imported) {
    try {
      EntryBody body = EntryJson.readStrictly(imported.number(), imported.body());
      if ((imported.number() == 1) != (body instanceof LedgerMade)
          || body instanceof LedgerMade made && !made.id().equals(current.ledger())) {
        return named(imported) + " does not begin that ledger as its first entry must";
      }
      String session = session(imported, body);
      return session != null ? session : within(imported.number(), body);
    } catch (LedgerFault e) {
      return named(imported) + " is wrong: " + e.getMessage();
    }
  }

  /** The session that the wrapping names must be the one that the imported body names. */
  private String session(ImportedEntry imported, EntryBody body) {
    Long named = null;
    if (body instanceof OfSession said) {
      named = said.session();
    } else if (body instanceof ImportedEntry deeper) {
      named = deeper.session();
    }
    Long expected = named == null ? null : Long.valueOf(numbers.own(named));
    return Objects.equals(expected, imported.session())
        ? null
        : named(imported) + " names session " + imported.session() + ", must be " + expected;
  }

  private String within(long number, EntryBody body) {
    return within(current.ledger())
        .accept(number, body)
        .map(wrong -> inside(current.ledger(), wrong))
        .orElse(null);
  }

  private static String inside(String ledger, String wrong) {
    return "in what ledger " + ledger + " had imported: " + wrong;
  }

  private String named(ImportedEntry imported) {
    return "the imported entry " + imported.number() + " of ledger " + current.ledger();
  }

  private Head head() {
    return heads.getOrDefault(current.ledger(), Head.NONE);
  }
}
