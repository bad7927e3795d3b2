package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import boreledger.drivers.profile.LineSettings.Parity;
import boreledger.drivers.profile.LineSettings.StopBits;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** A profile's {@code [line]} table. */
final class LineTable {
  private static final int MOST_BAUD = 4_000_000;
  private static final Map<String, Parity> PARITIES = new TreeMap<>();

  static {
    for (Parity parity : Parity.values()) {
      PARITIES.put(parity.name().toLowerCase(Locale.ROOT), parity);
    }
  }

  private LineTable() {}

  static LineSettings read(Table file) throws FileProblem {
    if (!file.has("line")) {
      return LineSettings.DEFAULT;
    }
    Table table = file.table("line");
    return new LineSettings(
        table.required("baud").integer(1, MOST_BAUD),
        table.required("data_bits").integer(5, 8),
        table.required("parity").oneOf(PARITIES),
        stopBits(table.required("stop_bits")),
        table.required("dtr").flag(),
        table.required("rts").flag());
  }

  private static StopBits stopBits(Value value) throws FileProblem {
    double count = value.number(1, 2);
    if (count == 1.5) {
      return StopBits.ONE_AND_A_HALF;
    }
    if (count != 1 && count != 2) {
      throw value.expected("1, 1.5 or 2");
    }
    return count == 1 ? StopBits.ONE : StopBits.TWO;
  }
}
