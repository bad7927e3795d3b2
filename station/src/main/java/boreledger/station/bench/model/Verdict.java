package boreledger.station.bench.model;

/**
 * What one cylinder's readings come to.
 *
 * @param title such as {@code Cylinder 2}
 * @param words the verdict in few words
 * @param details the numbers it rests on; empty when there are none
 */
public record Verdict(Kind kind, String title, String words, String details) {
  /** The sign beside the words. */
  public enum Kind {
    /** Every limit given is kept. */
    KEPT,
    /** Nothing is beyond a limit, but something asks for a look. */
    LOOK,
    /** A limit is exceeded. */
    BEYOND,
    /** Not decided yet. */
    OPEN
  }
}
