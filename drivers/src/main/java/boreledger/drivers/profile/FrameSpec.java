package boreledger.drivers.profile;

import boreledger.drivers.line.Bytes;

/** How bytes are cut into frames. */
public sealed interface FrameSpec {
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
  record Fixed(int bytes, Bytes startsWith, Bytes endsWith) implements FrameSpec {}
}
