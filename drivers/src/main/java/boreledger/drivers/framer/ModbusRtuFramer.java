package boreledger.drivers.framer;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.Crc;
import boreledger.drivers.profile.FrameSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts Modbus RTU messages, known by a length that fits their function code and by a right CRC.
 *
 * <pre>
 *   7f | 01 03 02 00 7b f8 67                      | 01 83 02 c0 f1
 *      | frame: slave 1, function 3, 2 data bytes  | frame: exception 2
 *   damage
 * </pre>
 *
 * <ul>
 *   <li>Every byte is tried as the start of a message. The message that is whole first wins, so
 *       that a stray byte that promises a long one cannot hold back the real one behind it; what
 *       stood before it is damage.
 *   <li>Damage that can no longer begin a message comes in pieces of at most 256 bytes.
 *   <li>It does not live on time: the standard's pauses of 1.5 and 3.5 characters are lost in the
 *       buffers of serial adapters. The end of the stream makes damage of what is left.
 * </ul>
 */
final class ModbusRtuFramer implements Framer {
  private static final int MOST = FrameSpec.ModbusRtu.MOST_BYTES;
  private static final int FEWEST = 5;
  private static final String NO_FRAME = "no Modbus RTU message with a right CRC";

  private final byte[] held = new byte[2 * MOST];
  private final double[] arrivedS = new double[2 * MOST];
  private int junk;
  private int size;

  @Override
  public List<FrameEvent> feed(LineEvent event) {
    List<FrameEvent> events = new ArrayList<>();
    if (event instanceof LineEvent.Chunk chunk) {
      for (int i = 0; i < chunk.bytes().size(); i++) {
        take(chunk.tS(), (byte) chunk.bytes().at(i), events);
      }
    }
    if (event.isLast() && size > 0) {
      events.add(damage(size));
      junk = 0;
    }
    return events;
  }

  private void take(double tS, byte next, List<FrameEvent> events) {
    held[size] = next;
    arrivedS[size] = tS;
    size++;
    int start = startOfWhole();
    if (start >= 0) {
      if (start > 0) {
        events.add(damage(start));
      }
      events.add(frame());
      junk = 0;
      return;
    }
    while (junk < size && !mayBegin(junk)) {
      junk++;
      if (junk == MOST) {
        events.add(damage(junk));
        junk = 0;
      }
    }
  }

  /** Where the message begins that the last byte made whole; -1 when it made none whole. */
  private int startOfWhole() {
    Bytes all = null;
    for (int start = Math.max(junk, size - MOST); start <= size - FEWEST; start++) {
      if (ModbusLengths.fit(held, start, size - start)) {
        all = all == null ? Bytes.of(held, 0, size) : all;
        // A message's CRC, itself included, is 0.
        if (Crc.MODBUS.of(all, start, size) == 0) {
          return start;
        }
      }
    }
    return -1;
  }

  private boolean mayBegin(int start) {
    return size - start < MOST && ModbusLengths.mayGrow(held, start, size - start);
  }

  private FrameEvent frame() {
    double tS = arrivedS[size - 1];
    Bytes raw = cut(size);
    return new FrameEvent.Frame(tS, raw, raw);
  }

  private FrameEvent damage(int count) {
    return new FrameEvent.Damage(arrivedS[count - 1], cut(count), NO_FRAME);
  }

  private Bytes cut(int count) {
    Bytes raw = Bytes.of(held, 0, count);
    System.arraycopy(held, count, held, 0, size - count);
    System.arraycopy(arrivedS, count, arrivedS, 0, size - count);
    size -= count;
    return raw;
  }
}
