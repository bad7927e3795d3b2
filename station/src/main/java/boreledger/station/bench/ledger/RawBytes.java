package boreledger.station.bench.ledger;

import boreledger.drivers.line.Bytes;
import java.util.ArrayList;
import java.util.List;

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
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i + 1 < hex.length(); i += 2) {
      pairs.add(hex.substring(i, i + 2));
    }
    return String.join(" ", pairs);
  }

  /** The printable characters of ASCII, and a full stop for each other byte. */
  static String printable(String hex) {
    Bytes bytes = Bytes.ofHex(hex);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < bytes.size(); i++) {
      int each = bytes.at(i);
      text.append(each >= FIRST_PRINTABLE && each <= LAST_PRINTABLE ? (char) each : '.');
    }
    return text.toString();
  }
}
