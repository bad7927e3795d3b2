package boreledger.drivers.decoder;

import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.RegisterQuery;
import boreledger.drivers.profile.UnitBits;
import java.nio.ByteOrder;
import java.util.Map;

/**
 * Reads a number from a Modbus response to a request for registers.
 *
 * <pre>
 *   offset  0     1        2      3  4  5  6  7  8   9  10
 *   byte    11    03       06     02 2b 00 00 00 64  c8 ba
 *           slave function bytes  registers          CRC (the framer has checked it)
 * </pre>
 *
 * <p>Rejected are responses of another slave, function or length, and exception responses (MODBUS
 * Application Protocol V1.1b3, 6.3, 6.4 and 7).
 */
final class RegisterReader implements NumberReader {
  private static final int HEADER_BYTES = 3;
  private static final int CRC_BYTES = 2;
  private static final int EXCEPTION = 0x80;
  private static final Map<Integer, String> EXCEPTIONS =
      Map.of(
          1, "illegal function",
          2, "illegal data address",
          3, "illegal data value",
          4, "server device failure",
          5, "acknowledge",
          6, "server device busy",
          8, "memory parity error",
          10, "gateway path unavailable",
          11, "gateway target device failed to respond");

  private final DecodeSpec.InRegisters spec;
  private final BinaryReader reader;

  RegisterReader(DecodeSpec.InRegisters spec, UnitBits unitBits) {
    this.spec = spec;
    reader = new BinaryReader(spec.number(), unitBits);
  }

  @Override
  public SentNumber read(FrameEvent.Frame frame, LengthUnit bitUnit) throws Unreadable {
    verify(frame.raw());
    return reader.read(new FrameBytes(frame.raw()), indices(), bitUnit);
  }

  private void verify(Bytes raw) throws Unreadable {
    RegisterQuery query = spec.query();
    if (raw.size() < HEADER_BYTES + CRC_BYTES) {
      throw new Unreadable(raw.size() + " bytes, too few for a Modbus response");
    }
    if (raw.equals(query.request())) {
      throw new Unreadable("the request itself came back, no response");
    }
    expect("slave", raw.at(0), query.slave());
    if (raw.at(1) == (query.function() | EXCEPTION)) {
      int code = raw.at(2);
      String name = EXCEPTIONS.getOrDefault(code, "not a standard one");
      throw new Unreadable(
          "slave " + query.slave() + " answers with exception " + code + ", " + name);
    }
    expect("function", raw.at(1), query.function());
    expect("number of data bytes", raw.at(2), query.dataBytes());
    expect("length", raw.size(), HEADER_BYTES + query.dataBytes() + CRC_BYTES);
  }

  private static void expect(String what, int found, int expected) throws Unreadable {
    if (found != expected) {
      throw new Unreadable("the response's " + what + " is " + found + ", expected " + expected);
    }
  }

  /** Where the data bytes stand, the most significant one first. */
  private int[] indices() {
    int registers = spec.query().registers();
    int[] indices = new int[spec.query().dataBytes()];
    for (int i = 0; i < registers; i++) {
      int register = spec.wordOrder() == ByteOrder.BIG_ENDIAN ? i : registers - 1 - i;
      indices[2 * i] = HEADER_BYTES + 2 * register;
      indices[2 * i + 1] = HEADER_BYTES + 2 * register + 1;
    }
    return indices;
  }
}
