package boreledger.drivers.learn;

import java.util.List;
import java.util.Set;

/**
 * What was learned.
 *
 * @param certain whether exactly one reading fits and nothing that matters is unseen; there is one
 *     candidate then
 * @param candidates the readings that fit, the likeliest first
 * @param why why it is certain or not, in one sentence
 * @param next what to show next; null when certain, or when nothing was heard
 * @param open what the values shown leave open; empty when certain, or when nothing was heard
 */
public record Learned(
    boolean certain, List<Candidate> candidates, String why, NextValue next, Set<Open> open) {
  /** Takes copies of the collections. */
  public Learned {
    candidates = List.copyOf(candidates);
    open = Set.copyOf(open);
  }

  /** Nothing that could be learned from. */
  static Learned nothing(String why) {
    return new Learned(false, List.of(), why, null, Set.of());
  }
}
