package boreledger.drivers.framer;

import boreledger.drivers.line.Bytes;

/**
 * Notices given bytes in a stream, one byte at a time. The search is that of Knuth, Morris and
 * Pratt (1977): after a mismatch it goes on with the longest beginning that the last bytes still
 * are.
 */
final class EndingMatch {
  private final byte[] sought;
  private final int[] border;
  private int matched;

  EndingMatch(Bytes sought) {
    this.sought = sought.toArray();
    border = borders(this.sought);
  }

  /** Takes the next byte; true when it completes the sought bytes, and the search starts anew. */
  boolean endsWith(byte next) {
    while (matched > 0 && sought[matched] != next) {
      matched = border[matched - 1];
    }
    if (sought[matched] == next) {
      matched++;
    }
    if (matched < sought.length) {
      return false;
    }
    matched = 0;
    return true;
  }

  /** Forgets what came before. */
  void restart() {
    matched = 0;
  }

  /** For each beginning, the length of the longest shorter beginning that it also ends with. */
  private static int[] borders(byte[] sought) {
    int[] border = new int[sought.length];
    int length = 0;
    for (int i = 1; i < sought.length; i++) {
      while (length > 0 && sought[i] != sought[length]) {
        length = border[length - 1];
      }
      if (sought[i] == sought[length]) {
        length++;
      }
      border[i] = length;
    }
    return border;
  }
}
