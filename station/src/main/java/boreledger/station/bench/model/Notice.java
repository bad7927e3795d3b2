package boreledger.station.bench.model;

/**
 * Something about the line or the machine that a person should know, whatever was read last.
 *
 * @param words one plain sentence without its full stop
 */
public record Notice(Kind kind, String words) {
  /** What kind of thing it is. */
  public enum Kind {
    /** Something looks wrong, such as a unit that changed in the middle. */
    CAUTION,
    /** The line went away and is waited for. */
    LINE_GONE,
    /** The line that had gone is there again. */
    LINE_BACK
  }
}
