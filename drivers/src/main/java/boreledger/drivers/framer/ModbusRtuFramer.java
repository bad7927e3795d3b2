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
 *   <li>A response of at most four registers is waited for whole where it begins: its first eight
 *       bytes may be a request with a right CRC by chance, and are for one response of two
 *       registers in 256, as a message with a right CRC and a zero behind it has a right CRC again.
 *   <li>Else every byte is tried as the start of a message. The message that is whole first wins,
 *       so that a stray byte that promises a long one cannot hold back the real one behind it; what
 *       stood before it is damage.
 *   <li>Damage that can no longer begin a message comes in pieces of at most 256 bytes.
 *   <li>It does not live on time: the standard's pauses of 1.5 and 3.5 characters are lost in the
 *       buffers of serial adapters. At the end of the stream nothing is waited for, and damage is
 *       made of what is left.
 * </ul>
 */
final class ModbusRtuFramer implements Framer {
  private static final int MOST = FrameSpec.ModbusRtu.MOST_BYTES;
  private static final int FEWEST = 5;
  private static final String NO_FRAME = "no Modbus RTU message with a right CRC";

  private final byte[] held = new byte[2 * MOST];
  private final double[] arrivedS = new double[2 * MOST];
  private int junk;
  private int tried;
  private int size;

  @Override
  public List<FrameEvent> feed(LineEvent event) {
    List<FrameEvent> events = new ArrayList<>();
    if (event instanceof LineEvent.Chunk chunk) {
      for (int i = 0; i < chunk.bytes().size(); i++) {
        held[size] = (byte) chunk.bytes().at(i);
        arrivedS[size] = chunk.tS();
        size++;
        settle(false, events);
      }
    }
    if (event.isLast()) {
      settle(true, events);
      damage(size, events);
    }
    return events;
  }

  /** Cuts what can be told from the bytes held. */
  private void settle(boolean ended, List<FrameEvent> events) {
    while (tried < size) {
      int promised = ModbusLengths.shortResponse(held, junk, size - junk);
      boolean whole = promised <= size - junk;
      if (!whole && !ended) {
        return;
      }
      if (whole && promised > 0 && hasRightCrc(junk, junk + promised)) {
        cut(junk, junk + promised, events);
      } else {
        tryNext(events);
      }
    }
  }

  private void tryNext(List<FrameEvent> events) {
    tried++;
    int start = startOfWhole();
    if (start >= 0) {
      cut(start, tried, events);
      return;
    }
    while (junk < tried && !mayBegin(junk)) {
      junk++;
      if (junk == MOST) {
        damage(junk, events);
      }
    }
  }

  /** Where the message begins that the last byte tried made whole; -1 when it made none whole. */
  private int startOfWhole() {
    for (int start = Math.max(junk, tried - MOST); start <= tried - FEWEST; start++) {
      if (ModbusLengths.fit(held, start, tried - start) && hasRightCrc(start, tried)) {
        return start;
      }
    }
    return -1;
  }

  private boolean hasRightCrc(int start, int end) {
    // A message's CRC, itself included, is 0.
    return Crc.MODBUS.of(Bytes.of(held, start, end - start)) == 0;
  }

  private boolean mayBegin(int start) {
    return tried - start < MOST && ModbusLengths.mayGrow(held, start, tried - start);
  }

  private void cut(int start, int end, List<FrameEvent> events) {
    damage(start, events);
    double tS = arrivedS[end - start - 1];
    Bytes raw = remove(end - start);
    events.add(new FrameEvent.Frame(tS, raw, raw));
  }

  private void damage(int count, List<FrameEvent> events) {
    if (count > 0) {
      double tS = arrivedS[count - 1];
      events.add(new FrameEvent.Damage(tS, remove(count), NO_FRAME));
    }
  }

  /** Takes the first bytes out; what is left is tried anew when a message was among them. */
  private Bytes remove(int count) {
    Bytes raw = Bytes.of(held, 0, count);
    System.arraycopy(held, count, held, 0, size - count);
    System.arraycopy(arrivedS, count, arrivedS, 0, size - count);
    size -= count;
    junk = 0;
    tried = Math.max(0, tried - count);
    return raw;
  }
}
