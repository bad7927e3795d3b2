package boreledger.drivers.profile;

import boreledger.drivers.line.Bytes;

/** How bytes are cut into frames. */
public sealed interface FrameSpec {
  /** The most bytes that a frame can have, its marks included. */
  int maxBytes();

  /**
   * A frame ends with given bytes.
   *
   * @param endsWith the ending, not empty
   * @param maxBytes the longest frame, ending included
   */
  record Delimited(Bytes endsWith, int maxBytes) implements FrameSpec {}

  /**
   * A frame has a fixed number of bytes.
   *
   * @param bytes the number of bytes, {@code startsWith} and {@code endsWith} included
   * @param startsWith bytes that every frame begins with, by which the cut is found again after
   *     damage; may be empty
   * @param endsWith bytes that every frame ends with; may be empty
   */
  record Fixed(int bytes, Bytes startsWith, Bytes endsWith) implements FrameSpec {
    @Override
    public int maxBytes() {
      return bytes;
    }
  }

  /**
   * A frame ends where the line falls silent.
   *
   * @param quietMs how long, from one chunk to the next; positive
   * @param maxBytes the longest frame
   */
  record Silence(double quietMs, int maxBytes) implements FrameSpec {}

  /**
   * A Modbus RTU message: its length follows from its function code, and its CRC must be right
   * (MODBUS over serial line V1.02, 2.5.1).
   */
  record ModbusRtu() implements FrameSpec {
    /** The longest message (MODBUS over serial line V1.02, 2.5.1). */
    public static final int MOST_BYTES = 256;

    @Override
    public int maxBytes() {
      return MOST_BYTES;
    }
  }
}
