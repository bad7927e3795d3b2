package boreledger.drivers.decoder;

import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.UnitBits;
import java.nio.ByteOrder;

/** Reads a number that stands in consecutive bytes of the whole frame, marks included. */
final class InBytesReader implements NumberReader {
  private final DecodeSpec.InBytes spec;
  private final BinaryReader reader;

  InBytesReader(DecodeSpec.InBytes spec, UnitBits unitBits) {
    this.spec = spec;
    reader = new BinaryReader(spec.number(), unitBits);
  }

  @Override
  public SentNumber read(FrameEvent.Frame frame, LengthUnit bitUnit) throws Unreadable {
    FrameBytes bytes = new FrameBytes(frame.raw());
    int first = bytes.index(spec.at(), spec.bytes());
    int[] indices = new int[spec.bytes()];
    for (int i = 0; i < indices.length; i++) {
      boolean big = spec.byteOrder() == ByteOrder.BIG_ENDIAN;
      indices[i] = first + (big ? i : indices.length - 1 - i);
    }
    return reader.read(bytes, indices, bitUnit);
  }
}
