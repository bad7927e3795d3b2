package boreledger.drivers.framer;

import boreledger.drivers.line.Bytes;

/**
 * What a framer cut out of the bytes: a whole frame, or damage.
 *
 * <p>The events' {@link #raw()} bytes, joined in order, are exactly the bytes fed: nothing is lost.
 */
public sealed interface FrameEvent {
  /** The time of the chunk that brought its last byte, in seconds on the line's clock. */
  double tS();

  /** Every byte it consists of, delimiters included. */
  Bytes raw();

  /**
   * One whole message.
   *
   * @param payload the message without its delimiters
   */
  record Frame(double tS, Bytes raw, Bytes payload) implements FrameEvent {}

  /**
   * Bytes that are no frame: junk, an over-long message, a message cut short.
   *
   * @param why one plain clause, such as {@code longer than 64 bytes without an ending}
   */
  record Damage(double tS, Bytes raw, String why) implements FrameEvent {}
}
