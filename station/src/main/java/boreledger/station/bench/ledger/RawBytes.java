package boreledger.station.bench.ledger;

import java.util.HexFormat;

/** Bytes as a person reads them. */
final class RawBytes {
  private static final int FIRST_PRINTABLE = 0x20;
  private static final int LAST_PRINTABLE = 0x7e;
  private static final int START = 24;

  private RawBytes() {}

  /** The first printable ones, when there are many. */
  static String start(String hex) {
    String whole = printable(hex);
    return whole.length() > START ? whole.substring(0, START) + "\u2026" : whole;
  }

  /** Pairs of digits parted by blanks, such as {@code 2b 30 0d}. */
  static String hex(String hex) {
    return HexFormat.ofDelimiter(" ").formatHex(HexFormat.of().parseHex(hex));
  }

  /** The printable characters of ASCII, and a full stop for each other byte. */
  static String printable(String hex) {
    StringBuilder text = new StringBuilder();
    for (byte each : HexFormat.of().parseHex(hex)) {
      text.append(each >= FIRST_PRINTABLE && each <= LAST_PRINTABLE ? (char) each : '.');
    }
    return text.toString();
  }
}
