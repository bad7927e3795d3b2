package boreledger.drivers.learn;

import java.util.List;

/**
 * What was learned.
 *
 * @param certain whether exactly one reading fits and nothing that matters is unseen; there is one
 *     candidate then
 * @param candidates the readings that fit, the likeliest first
 * @param why why it is certain or not, in one sentence
 * @param next what to show next; null when certain, or when nothing was heard
 */
public record Learned(boolean certain, List<Candidate> candidates, String why, NextValue next) {
  /** Takes a copy of the list. */
  public Learned {
    candidates = List.copyOf(candidates);
  }

  /** Nothing that could be learned from. */
  static Learned nothing(String why) {
    return new Learned(false, List.of(), why, null);
  }
}
