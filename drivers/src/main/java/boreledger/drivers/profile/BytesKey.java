package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import boreledger.drivers.line.Bytes;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Bytes in a profile, written as ASCII text or, with {@code _hex} behind the key, in hex. */
final class BytesKey {
  private BytesKey() {}

  /** The bytes of {@code key} or {@code key_hex}; none when both are left out. */
  static Bytes read(Table table, String key) throws FileProblem {
    Optional<Value> text = table.optional(key);
    Optional<Value> hex = table.optional(key + "_hex");
    if (text.isPresent() && hex.isPresent()) {
      throw hex.get().problem("both " + key + " and " + key + "_hex, expected one of them");
    }
    if (text.isPresent()) {
      return ascii(text.get());
    }
    return hex.isPresent() ? hex(hex.get()) : Bytes.EMPTY;
  }

  private static Bytes ascii(Value value) throws FileProblem {
    String text = value.text();
    if (text.isEmpty() || !StandardCharsets.US_ASCII.newEncoder().canEncode(text)) {
      throw value.expected("one or more ASCII characters");
    }
    return Bytes.of(text.getBytes(StandardCharsets.US_ASCII));
  }

  private static Bytes hex(Value value) throws FileProblem {
    String text = value.string();
    if (!text.matches("(?:[0-9a-fA-F]{2})+")) {
      throw value.expected("pairs of hexadecimal digits, such as \"0d0a\"");
    }
    return Bytes.ofHex(text);
  }
}
