package boreledger.drivers.framer;

/**
 * How long a Modbus RTU message is that begins with given bytes, CRC included. What does not say so
 * itself is told by the function code; a request and its response may differ, and both can be seen
 * on a line with two wires.
 *
 * <pre>
 * function                    request             response
 * 01 to 04  read              8                   5 + byte 2
 * 05, 06    write one         8                   8
 * 08        diagnostics       8                   8
 * 0f, 10    write several     9 + byte 6          8
 * 81 to ff  exception                             5
 * </pre>
 *
 * <p>Source: MODBUS Application Protocol V1.1b3, 6.1 to 6.6, 6.8, 6.11, 6.12 and 7, with one byte
 * of address before and two of CRC behind.
 */
final class ModbusLengths {
  private static final int MOST_SLAVE = 247;
  private static final int EXCEPTION = 0x80;
  private static final int MOST_SHORT_DATA = 8;

  private ModbusLengths() {}

  /** Whether so many bytes can be a whole message. */
  static boolean fit(byte[] held, int start, int length) {
    if (Byte.toUnsignedInt(held[start]) > MOST_SLAVE) {
      return false;
    }
    int function = Byte.toUnsignedInt(held[start + 1]);
    if (length == 8 && hasShortForm(function)) {
      return true;
    }
    if (isRead(function)) {
      int data = Byte.toUnsignedInt(held[start + 2]);
      return data > 0 && length == 5 + data;
    }
    if (isWriteSeveral(function)) {
      return length > 8 && length == 9 + Byte.toUnsignedInt(held[start + 6]);
    }
    return function > EXCEPTION && length == 5;
  }

  /** Whether a message longer than what has come of it can begin so. */
  static boolean mayGrow(byte[] held, int start, int length) {
    if (Byte.toUnsignedInt(held[start]) > MOST_SLAVE) {
      return false;
    }
    if (length < 2) {
      return true;
    }
    int function = Byte.toUnsignedInt(held[start + 1]);
    if (isRead(function)) {
      int longest = length < 3 ? 8 : Math.max(8, 5 + Byte.toUnsignedInt(held[start + 2]));
      return length < longest;
    }
    if (isWriteSeveral(function)) {
      return length < 7 || length < 9 + Byte.toUnsignedInt(held[start + 6]);
    }
    return length < (hasShortForm(function) ? 8 : function > EXCEPTION ? 5 : 0);
  }

  /**
   * How long a response of one to four registers is that begins so; 0 when none begins so, or when
   * too little has come to say.
   */
  static int shortResponse(byte[] held, int start, int length) {
    if (length < 3 || Byte.toUnsignedInt(held[start]) > MOST_SLAVE) {
      return 0;
    }
    int data = Byte.toUnsignedInt(held[start + 2]);
    boolean registers = held[start + 1] == 3 || held[start + 1] == 4;
    boolean plausible = data > 0 && data <= MOST_SHORT_DATA && data % 2 == 0;
    return registers && plausible ? 5 + data : 0;
  }

  private static boolean isRead(int function) {
    return function >= 1 && function <= 4;
  }

  private static boolean isWriteSeveral(int function) {
    return function == 0x0F || function == 0x10;
  }

  private static boolean hasShortForm(int function) {
    return function >= 1 && function <= 6 || function == 8 || isWriteSeveral(function);
  }
}
