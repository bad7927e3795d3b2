package boreledger.drivers.decoder;

import boreledger.drivers.line.Bytes;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** A frame's payload as text. */
final class AsciiText {
  private AsciiText() {}

  /** The text of a payload that is not empty and ASCII throughout. */
  static String of(Bytes payload) throws Unreadable {
    if (payload.size() == 0) {
      throw new Unreadable("empty frame");
    }
    for (int i = 0; i < payload.size(); i++) {
      if (payload.at(i) > 127) {
        throw new Unreadable(
            String.format(Locale.ROOT, "byte %d is %02x, not ASCII", i + 1, payload.at(i)));
      }
    }
    return new String(payload.toArray(), StandardCharsets.US_ASCII);
  }
}
