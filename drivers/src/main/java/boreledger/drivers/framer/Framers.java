package boreledger.drivers.framer;

import boreledger.drivers.profile.FrameSpec;

/** Makes the framer that a profile asks for. */
public final class Framers {
  private Framers() {}

  /** A new framer, at the start of a stream. */
  public static Framer of(FrameSpec spec) {
    if (spec instanceof FrameSpec.Delimited delimited) {
      return new DelimitedFramer(delimited);
    }
    if (spec instanceof FrameSpec.Silence silence) {
      return new SilenceFramer(silence);
    }
    if (spec instanceof FrameSpec.ModbusRtu) {
      return new ModbusRtuFramer();
    }
    return new FixedFramer((FrameSpec.Fixed) spec);
  }
}
