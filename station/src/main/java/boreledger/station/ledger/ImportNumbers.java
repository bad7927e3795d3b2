package boreledger.station.ledger;

import boreledger.station.ledger.EntryBody.Imported;
import java.util.ArrayList;
import java.util.List;

/**
 * Which number an entry of another ledger has in this one.
 *
 * @param stretches what was imported from that ledger, in the order it was; each begins where the
 *     one before ended
 */
public record ImportNumbers(List<Stretch> stretches) {
  /**
   * Entries that came in together.
   *
   * @param opening the number of the {@link Imported} entry, after which they stand
   * @param first the first one's number in the other ledger
   */
  public record Stretch(long opening, long first, long entries) {
    private boolean holds(long number) {
      return number >= first && number < first + entries;
    }
  }

  /** Takes a copy of the list. */
  public ImportNumbers {
    stretches = List.copyOf(stretches);
  }

  /**
   * The numbers of one ledger's entries.
   *
   * @param imports the entries that open imports, oldest first
   * @param ledger that ledger's id
   */
  public static ImportNumbers of(List<Entry> imports, String ledger) {
    List<Stretch> stretches = new ArrayList<>();
    for (Entry opening : imports) {
      if (opening.body() instanceof Imported imported && imported.ledger().equals(ledger)) {
        stretches.add(new Stretch(opening.seq(), imported.first(), imported.entries()));
      }
    }
    return new ImportNumbers(stretches);
  }

  /** These with one more import. */
  public ImportNumbers with(Stretch more) {
    List<Stretch> all = new ArrayList<>(stretches);
    all.add(more);
    return new ImportNumbers(all);
  }

  /** The number here for a number there; 0, which no entry has, when that one was not imported. */
  public long own(long number) {
    return stretches.stream()
        .filter(stretch -> stretch.holds(number))
        .mapToLong(stretch -> stretch.opening() + 1 + number - stretch.first())
        .findFirst()
        .orElse(0);
  }

  /** The last number there that was imported; 0 when nothing was. */
  public long last() {
    return stretches.isEmpty()
        ? 0
        : stretches.get(stretches.size() - 1).first()
            + stretches.get(stretches.size() - 1).entries()
            - 1;
  }
}
