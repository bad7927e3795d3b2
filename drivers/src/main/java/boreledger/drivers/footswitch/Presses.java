package boreledger.drivers.footswitch;

import boreledger.drivers.line.Bytes;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts what a switch sends into presses. A press is a line ended by CR, LF or CRLF, and nothing
 * else: an empty line is one too, and two lines are two, however close in time. Over-long lines and
 * those cut short are none.
 *
 * <pre>
 *   41 0d 0a 0d 42    "A", "", and the beginning of another line
 * </pre>
 */
final class Presses {
  /** The longest line that can be a press, in bytes. */
  static final int LONGEST = 256;

  private static final int CR = '\r';
  private static final int LF = '\n';

  private final ByteArrayOutputStream line = new ByteArrayOutputStream();
  private boolean afterCr;
  private boolean tooLong;

  /** The texts of the presses that these bytes complete, in order, without their endings. */
  List<String> feed(Bytes bytes) {
    List<String> presses = new ArrayList<>();
    for (byte next : bytes.toArray()) {
      boolean secondOfTwo = afterCr && next == LF;
      afterCr = next == CR;
      if (next != CR && next != LF) {
        add(next);
      } else if (!secondOfTwo) {
        end(presses);
      }
    }
    return presses;
  }

  /** Forgets a line that was cut short. */
  void cut() {
    line.reset();
    afterCr = false;
    tooLong = false;
  }

  private void add(byte next) {
    tooLong |= line.size() == LONGEST;
    if (!tooLong) {
      line.write(next);
    }
  }

  private void end(List<String> presses) {
    if (!tooLong) {
      presses.add(line.toString(StandardCharsets.UTF_8));
    }
    line.reset();
    tooLong = false;
  }
}
