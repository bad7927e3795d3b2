package boreledger.drivers.decoder;

import boreledger.drivers.file.OneLine;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.CheckSpec;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Compares the check that a frame carries with the one computed from its bytes. */
final class FrameCheck {
  private final CheckSpec spec;

  FrameCheck(CheckSpec spec) {
    this.spec = spec;
  }

  /** Passes silently when the two agree; the message else says both. */
  void verify(FrameBytes frame) throws Unreadable {
    Bytes sent = frame.slice(spec.at(), spec.bytesInFrame());
    String found = spec.asHexText() ? hexText(sent) : sent.toHex();
    String computed = inFrameOrder(spec.sum().of(frame.range(spec.from(), spec.to())));
    if (!found.equals(computed)) {
      throw new Unreadable(
          spec.sum().kind() + " in the frame is " + found + ", computed " + computed);
    }
  }

  private String hexText(Bytes sent) throws Unreadable {
    String text = new String(sent.toArray(), StandardCharsets.ISO_8859_1);
    if (!text.matches("[0-9a-fA-F]+")) {
      throw new Unreadable(
          spec.sum().kind() + " in the frame is \"" + OneLine.of(text) + "\", no hexadecimal text");
    }
    return text.toLowerCase(Locale.ROOT);
  }

  private String inFrameOrder(long check) {
    int count = spec.sum().bytes();
    StringBuilder hex = new StringBuilder();
    for (int i = 0; i < count; i++) {
      int place = spec.byteOrder() == ByteOrder.BIG_ENDIAN ? count - 1 - i : i;
      hex.append(String.format(Locale.ROOT, "%02x", check >>> (8 * place) & 0xFF));
    }
    return hex.toString();
  }
}
