package boreledger.drivers.decoder;

import boreledger.drivers.framer.FrameEvent;

/** Turns one frame into one value. It keeps no state and throws nothing, whatever the bytes. */
public interface Decoder {
  /** Decodes a frame. */
  Decoded decode(FrameEvent.Frame frame);
}
