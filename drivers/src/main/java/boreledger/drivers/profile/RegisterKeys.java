package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.nio.ByteOrder;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The keys of a {@code [decode]} table whose number stands in Modbus registers. */
final class RegisterKeys {
  private static final int MOST_SLAVE = 247;
  private static final int MOST_REGISTER = 65_535;
  private static final Map<String, String> TYPES =
      new TreeMap<>(
          Map.of("integer", "integer", "float", "float", "packed-digits", "packed-digits"));

  private RegisterKeys() {}

  static DecodeSpec read(Table table, Value kind, FrameSpec frame) throws FileProblem {
    if (!(frame instanceof FrameSpec.ModbusRtu)) {
      throw kind.problem("modbus-registers want [frame] kind = \"modbus-rtu\"");
    }
    String type = table.required("type").oneOf(TYPES);
    RegisterQuery query =
        new RegisterQuery(
            table.required("slave").integer(1, MOST_SLAVE),
            table.required("function").integer(3, 4),
            table.required("register").integer(0, MOST_REGISTER),
            registers(table.required("registers"), type));
    if (query.register() + query.registers() > MOST_REGISTER + 1) {
      throw table.required("register").expected("one with room for " + query.registers());
    }
    Optional<Value> order = table.optional("word_order");
    return new DecodeSpec.InRegisters(
        query,
        order.isPresent() ? order.get().oneOf(NumberKeys.ORDERS) : ByteOrder.BIG_ENDIAN,
        NumberKeys.read(table, type, new FramePlace(frame)));
  }

  private static int registers(Value value, String type) throws FileProblem {
    int registers = value.integer(1, 4);
    if (registers == 3) {
      throw value.expected("1, 2 or 4");
    }
    if (type.equals("float") && registers == 1) {
      throw value.expected("2 or 4 for a float");
    }
    return registers;
  }
}
