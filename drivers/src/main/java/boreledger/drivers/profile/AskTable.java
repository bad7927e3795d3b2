package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import boreledger.drivers.line.Bytes;
import java.util.Map;
import java.util.Optional;

/** A profile's {@code [ask]} table. */
final class AskTable {
  private static final Map<String, String> TRIGGER = Map.of("trigger", "trigger");
  private static final int MOST_MS = 3_600_000;
  private static final double BITS_PER_CHARACTER = 11;
  private static final double FEWEST_PAUSE_MS = 1.75;

  private AskTable() {}

  /** What the table says; empty when there is none. */
  static Optional<AskSpec> read(Table file, DecodeSpec decode, LineSettings line)
      throws FileProblem {
    if (!file.has("ask")) {
      return Optional.empty();
    }
    Table table = file.table("ask");
    Bytes request = request(table, decode);
    Double everyMs = everyMs(table);
    Optional<Value> within = table.optional("answer_within_ms");
    double answerWithinMs =
        within.isPresent() ? within.get().number(1, MOST_MS) : AskSpec.ANSWER_WITHIN_MS;
    boolean modbus = decode instanceof DecodeSpec.InRegisters;
    double pauseMs = modbus ? modbusPauseMs(line.baud()) : 0;
    return Optional.of(new AskSpec(request, everyMs, answerWithinMs, pauseMs));
  }

  private static Bytes request(Table table, DecodeSpec decode) throws FileProblem {
    Bytes request = BytesKey.read(table, "send");
    if (request.size() == 0 && decode instanceof DecodeSpec.InRegisters registers) {
      return registers.query().request();
    }
    if (request.size() == 0) {
      table.required("send");
    }
    return request;
  }

  private static Double everyMs(Table table) throws FileProblem {
    Optional<Value> on = table.optional("on");
    if (on.isEmpty()) {
      return table.required("every_ms").number(1, MOST_MS);
    }
    on.get().oneOf(TRIGGER);
    if (table.has("every_ms")) {
      throw table.required("every_ms").problem("both every_ms and on, expected one of them");
    }
    return null;
  }

  /**
   * 3.5 characters of 11 bits, or 1.75 ms above 19200 baud (MODBUS over serial line V1.02,
   * 2.5.1.1).
   */
  private static double modbusPauseMs(int baud) {
    return baud > 19_200 ? FEWEST_PAUSE_MS : 3.5 * BITS_PER_CHARACTER * 1000 / baud;
  }
}
