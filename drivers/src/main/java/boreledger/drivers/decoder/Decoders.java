package boreledger.drivers.decoder;

import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.UnitBits;

/** Makes the decoder that a profile asks for. */
public final class Decoders {
  private Decoders() {}

  /** A decoder for the profile's frames. */
  public static Decoder of(GaugeProfile profile) {
    return new FrameDecoder(profile, numbers(profile.decode(), profile.flags().unit()));
  }

  private static NumberReader numbers(DecodeSpec spec, UnitBits unitBits) {
    if (spec instanceof DecodeSpec.ByPattern pattern) {
      return new PatternReader(pattern);
    }
    if (spec instanceof DecodeSpec.Ieee488 response) {
      return new Ieee488Reader(response);
    }
    if (spec instanceof DecodeSpec.InBytes inBytes) {
      return new InBytesReader(inBytes, unitBits);
    }
    return new RegisterReader((DecodeSpec.InRegisters) spec, unitBits);
  }
}
