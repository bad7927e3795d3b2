package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.profile.LineSettings.Parity;
import java.util.Optional;

/** What the bytes of one press say about the setting that they were heard with. */
enum Hearing {
  /** Nothing came. */
  NOTHING,
  /** Text of seven bits, or a Modbus response: the setting is right. */
  PLAIN,
  /** Text of seven bits, each made even by the eighth. */
  EVEN,
  /** Text of seven bits, each made odd by the eighth. */
  ODD,
  /** Bytes that may be a gauge's or the noise of a wrong setting. */
  BYTES;

  private static final int LEAST_TEXT = 5;

  /** The verdict on bytes heard with eight data bits and no parity. */
  static Hearing of(Bytes heard) {
    if (heard.size() == 0) {
      return NOTHING;
    }
    if (ModbusResponse.isOne(heard)) {
      return PLAIN;
    }
    if (!isText(heard)) {
      return BYTES;
    }
    int even = 0;
    int high = 0;
    for (int i = 0; i < heard.size(); i++) {
      even += Integer.bitCount(heard.at(i)) % 2 == 0 ? 1 : 0;
      high += heard.at(i) >>> 7;
    }
    if (high == 0) {
      return PLAIN;
    }
    return even == heard.size() ? EVEN : even == 0 ? ODD : BYTES;
  }

  /** The setting that such bytes call for; empty when it has to be found out. */
  Optional<LineSettings> settings(LineSettings heardWith) {
    return switch (this) {
      case PLAIN -> Optional.of(heardWith);
      case EVEN -> Optional.of(seven(heardWith, Parity.EVEN));
      case ODD -> Optional.of(seven(heardWith, Parity.ODD));
      default -> Optional.empty();
    };
  }

  private static LineSettings seven(LineSettings line, Parity parity) {
    return new LineSettings(line.baud(), 7, parity, line.stopBits(), line.dtr(), line.rts());
  }

  /** Whether the lower seven bits are characters one can read, digits among them. */
  private static boolean isText(Bytes heard) {
    int readable = 0;
    int digits = 0;
    for (int i = 0; i < heard.size(); i++) {
      int low = heard.at(i) & 0x7f;
      boolean control = low == '\r' || low == '\n' || low == '\t' || low >= 2 && low <= 4;
      readable += low >= ' ' && low < 0x7f || control ? 1 : 0;
      digits += low >= '0' && low <= '9' ? 1 : 0;
    }
    return heard.size() >= LEAST_TEXT && readable == heard.size() && 8 * digits >= heard.size();
  }
}
