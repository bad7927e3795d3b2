package boreledger.calc.gapping;

import boreledger.calc.input.ImpossibleInput;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The gap rule table.
 *
 * @param rows in the file's order; one per use and ring
 */
public record GapRules(List<GapRule> rows) {
  /**
   * Takes a copy and checks it.
   *
   * @throws ImpossibleInput when a use and ring are there twice
   */
  public GapRules {
    rows = List.copyOf(rows);
    Set<List<String>> seen = new HashSet<>();
    for (GapRule row : rows) {
      if (!seen.add(List.of(row.use(), row.ring()))) {
        throw new ImpossibleInput(
            "gap rule for use " + row.use() + " and ring " + row.ring() + " is there twice");
      }
    }
  }

  /** The row for a use and a ring; empty when there is none. */
  public Optional<GapRule> find(String use, String ring) {
    return rows.stream()
        .filter(row -> row.use().equals(use) && row.ring().equals(ring))
        .findFirst();
  }

  /** The uses in the table, in its order. */
  public List<String> uses() {
    return rows.stream().map(GapRule::use).distinct().toList();
  }
}
