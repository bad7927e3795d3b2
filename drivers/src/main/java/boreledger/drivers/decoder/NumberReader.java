package boreledger.drivers.decoder;

import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.profile.LengthUnit;

/** Finds the number in a frame, in one of the ways that a profile may ask for. */
interface NumberReader {
  /**
   * The frame's number.
   *
   * @param bitUnit the unit that bits of the frame name; null when they name none
   */
  SentNumber read(FrameEvent.Frame frame, LengthUnit bitUnit) throws Unreadable;
}
