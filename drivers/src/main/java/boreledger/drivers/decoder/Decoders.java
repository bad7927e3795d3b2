package boreledger.drivers.decoder;

import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.GaugeProfile;

/** Makes the decoder that a profile asks for. */
public final class Decoders {
  private Decoders() {}

  /** A decoder for the profile's frames. */
  public static Decoder of(GaugeProfile profile) {
    return new PatternDecoder((DecodeSpec.ByPattern) profile.decode(), profile.unit());
  }
}
