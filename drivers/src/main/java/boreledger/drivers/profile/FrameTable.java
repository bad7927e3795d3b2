package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import boreledger.drivers.line.Bytes;

/** A profile's {@code [frame]} table. */
final class FrameTable {
  private static final int MOST_BYTES = 65_536;

  private FrameTable() {}

  static FrameSpec read(Table table) throws FileProblem {
    Value kind = table.required("kind");
    return switch (kind.string()) {
      case "line" -> delimited(table);
      case "fixed" -> fixed(table);
      case "silence" -> silence(table);
      case "modbus-rtu" -> new FrameSpec.ModbusRtu();
      default -> throw kind.expected("one of \"line\", \"fixed\", \"silence\", \"modbus-rtu\"");
    };
  }

  private static FrameSpec delimited(Table table) throws FileProblem {
    Bytes ending = BytesKey.read(table, "ends_with");
    if (ending.size() == 0) {
      table.required("ends_with");
    }
    Value most = table.required("max_bytes");
    return new FrameSpec.Delimited(ending, most.integer(ending.size() + 1, MOST_BYTES));
  }

  private static FrameSpec fixed(Table table) throws FileProblem {
    Bytes start = BytesKey.read(table, "starts_with");
    Bytes end = BytesKey.read(table, "ends_with");
    int least = start.size() + end.size() + 1;
    int size = table.required("bytes").integer(least, MOST_BYTES);
    return new FrameSpec.Fixed(size, start, end);
  }

  private static FrameSpec silence(Table table) throws FileProblem {
    double quietMs = table.required("quiet_ms").positive();
    return new FrameSpec.Silence(quietMs, table.required("max_bytes").integer(1, MOST_BYTES));
  }
}
