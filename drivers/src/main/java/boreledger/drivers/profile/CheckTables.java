package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A profile's {@code [[check]]} tables. */
final class CheckTables {
  private static final Map<String, Boolean> AS_HEX_TEXT =
      new TreeMap<>(Map.of("bytes", false, "hex-text", true));

  private CheckTables() {}

  static List<CheckSpec> read(Table file, FrameSpec frame) throws FileProblem {
    FramePlace place = new FramePlace(frame);
    List<CheckSpec> checks = new ArrayList<>();
    for (Table table : file.tables("check")) {
      checks.add(check(table, place));
    }
    return checks;
  }

  private static CheckSpec check(Table table, FramePlace place) throws FileProblem {
    CheckSpec.Sum sum = sum(table);
    ByteOrder order = byteOrder(table, sum);
    Optional<Value> as = table.optional("as");
    boolean asHexText = as.isPresent() && as.get().oneOf(AS_HEX_TEXT);
    int from = place.boundary(table, "from");
    int to = place.boundary(table, "to");
    if (from < 0 == to < 0 && from >= to) {
      throw table.required("to").expected("more than from, which is " + from);
    }
    int bytes = asHexText ? 2 * sum.bytes() : sum.bytes();
    return new CheckSpec(sum, from, to, place.at(table, "at", bytes), asHexText, order);
  }

  private static ByteOrder byteOrder(Table table, CheckSpec.Sum sum) throws FileProblem {
    boolean wanted = sum.bytes() > 1;
    boolean given = sum instanceof CheckSpec.Cyclic && table.has("byte_order");
    return wanted || given
        ? table.required("byte_order").oneOf(NumberKeys.ORDERS)
        : ByteOrder.BIG_ENDIAN;
  }

  private static CheckSpec.Sum sum(Table table) throws FileProblem {
    Value kind = table.required("kind");
    return switch (kind.string()) {
      case "sum8" -> new CheckSpec.Sum8();
      case "xor8" -> new CheckSpec.Xor8();
      case "crc" -> new CheckSpec.Cyclic(crc(table));
      default -> throw kind.expected("one of \"sum8\", \"xor8\", \"crc\"");
    };
  }

  private static Crc crc(Table table) throws FileProblem {
    int width = table.required("width").integer(8, 32);
    long most = (1L << width) - 1;
    return new Crc(
        width,
        table.required("polynomial").whole(1, most),
        table.required("init").whole(0, most),
        table.required("reflect_in").flag(),
        table.required("reflect_out").flag(),
        table.required("xor_out").whole(0, most));
  }
}
