package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;

/**
 * How the line is.
 *
 * @param source where the bytes come from; empty before the first session
 * @param words such as {@code receiving}
 * @param refused how many samples were refused, and the last reason
 */
public record LineHealth(State state, String source, String words, String refused) {
  /** The sign beside the words. */
  public enum State {
    /** No session yet. */
    NONE,
    /** Up, but nothing came yet. */
    WAITING,
    /** Samples come. */
    RECEIVING,
    /** No sample for a while; for many gauges that is nothing unusual. */
    QUIET,
    /** It went away and is waited for. */
    GONE,
    /** It has no more to give, or the session was stopped. */
    ENDED,
    /** It broke. */
    BROKE
  }

  static LineHealth none() {
    return new LineHealth(State.NONE, "", BenchText.LINE_NONE.with(), "");
  }
}
