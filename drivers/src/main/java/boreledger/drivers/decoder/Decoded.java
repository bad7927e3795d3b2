package boreledger.drivers.decoder;

import boreledger.drivers.line.Bytes;

/** What became of a frame: a sample, or a rejection with its reason. */
public sealed interface Decoded permits Sample, Rejected {
  /** The frame's time, in seconds on the line's clock. */
  double tS();

  /** The frame's bytes, delimiters included. */
  Bytes raw();
}
