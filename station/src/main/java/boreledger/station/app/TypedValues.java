package boreledger.station.app;

import boreledger.drivers.keyboard.KeyboardLine;

/**
 * Values that a gauge types into a window, for the line that listens to them. Any thread may use
 * it.
 */
public final class TypedValues implements Typing {
  private KeyboardLine listening;

  /** Nobody listens yet. */
  public TypedValues() {}

  @Override
  public synchronized void into(KeyboardLine line) {
    listening = line;
  }

  /** Whether a line wants what is typed. */
  public synchronized boolean isListening() {
    return listening != null;
  }

  /** Brings a value, without its Enter; it is lost when no line listens. */
  public synchronized void typed(String value) {
    if (listening != null) {
      listening.typed(value);
    }
  }

  /** Brings a value that came in pieces, to be told of and not read. */
  public synchronized void inPieces(String text) {
    if (listening != null) {
      listening.inPieces(text);
    }
  }

  /** Nobody listens any more. */
  public synchronized void end() {
    listening = null;
  }
}
