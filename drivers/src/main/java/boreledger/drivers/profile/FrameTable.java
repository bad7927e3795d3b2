package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import boreledger.drivers.line.Bytes;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A profile's {@code [frame]} table. */
final class FrameTable {
  private static final int MOST_BYTES = 65_536;

  private FrameTable() {}

  static FrameSpec read(Table table) throws FileProblem {
    Value kind = table.required("kind");
    return switch (kind.string()) {
      case "line" -> delimited(table);
      case "fixed" -> fixed(table);
      case "silence", "modbus-rtu" ->
          throw kind.expected(
              "\"line\" or \"fixed\"; this version does not read " + kind.string() + " frames");
      default -> throw kind.expected("one of \"line\", \"fixed\"");
    };
  }

  private static FrameSpec delimited(Table table) throws FileProblem {
    Bytes ending = bytes(table, "ends_with");
    if (ending.size() == 0) {
      table.required("ends_with");
    }
    Value most = table.required("max_bytes");
    return new FrameSpec.Delimited(ending, most.integer(ending.size() + 1, MOST_BYTES));
  }

  private static FrameSpec fixed(Table table) throws FileProblem {
    Bytes start = bytes(table, "starts_with");
    Bytes end = bytes(table, "ends_with");
    int least = start.size() + end.size() + 1;
    int size = table.required("bytes").integer(least, MOST_BYTES);
    return new FrameSpec.Fixed(size, start, end);
  }

  /** The bytes of {@code key} or {@code key_hex}; none when both are left out. */
  private static Bytes bytes(Table table, String key) throws FileProblem {
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
