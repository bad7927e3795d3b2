package boreledger.drivers.line;

/**
 * What a line has to say at one moment.
 *
 * <p>Times are seconds on the line's own clock: since the port was opened, or since the start of a
 * capture. They never run backwards.
 */
public sealed interface LineEvent {
  /** When it happened, in seconds on the line's clock. */
  double tS();

  /** Whether nothing can come after it. */
  default boolean isLast() {
    return false;
  }

  /** Bytes arrived; a chunk is cut wherever the wire happened to pause and means nothing itself. */
  record Chunk(double tS, Bytes bytes) implements LineEvent {}

  /**
   * Bytes arrived of which is known that they are no value, whatever a decoder would read in them.
   *
   * @param why one plain clause for a person
   */
  record Spoilt(double tS, Bytes bytes, String why) implements LineEvent {}

  /** Nothing arrived for the time waited. */
  record Quiet(double tS) implements LineEvent {}

  /**
   * The other end has gone; it is waited for. What it had not sent whole will not come any more.
   *
   * @param why one line for a person: which line, what happened; said again when there is something
   *     new to tell
   */
  record Gone(double tS, String why) implements LineEvent {}

  /**
   * The other end that had gone is there again.
   *
   * @param how one line for a person: which line, and where it was found
   */
  record Back(double tS, String how) implements LineEvent {}

  /** No more will ever come: the capture is played out, or the line was closed from this side. */
  record End(double tS) implements LineEvent {
    @Override
    public boolean isLast() {
      return true;
    }
  }

  /** The line broke: no more will come, and what was being said may have been cut short. */
  record Cut(double tS) implements LineEvent {
    @Override
    public boolean isLast() {
      return true;
    }
  }
}
