package boreledger.drivers.file;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word that a person most likely meant. */
final class NearestWord {
  private NearestWord() {}

  /**
   * The candidate with the fewest single-character edits from {@code word}, if there are at most
   * two, or a third of the word's length.
   */
  static Optional<String> of(String word, Collection<String> candidates) {
    int most = Math.max(2, word.length() / 3);
    return candidates.stream()
        .filter(candidate -> Math.abs(candidate.length() - word.length()) <= most)
        .filter(candidate -> edits(word, candidate) <= most)
        .min(Comparator.comparingInt(candidate -> edits(word, candidate)));
  }

  /** The Levenshtein distance: insertions, deletions and substitutions. */
  private static int edits(String from, String to) {
    int[] row = new int[to.length() + 1];
    for (int j = 0; j < row.length; j++) {
      row[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int substitute = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(substitute, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[to.length()];
  }
}
