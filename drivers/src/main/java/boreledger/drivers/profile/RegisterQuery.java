package boreledger.drivers.profile;

import boreledger.drivers.line.Bytes;

/**
 * A Modbus request to read registers.
 *
 * <pre>
 * slave 17, function 3, register 107, 3 registers
 *
 *   offset  0     1        2  3     4  5       6  7
 *   byte    11    03       00 6b    00 03      76 87
 *           slave function register registers  CRC, low byte first
 * </pre>
 *
 * @param slave 1 to 247
 * @param function 3, read holding registers, or 4, read input registers
 * @param register the first register's address, from 0
 * @param registers how many
 * @see <a href="https://modbus.org/specs.php">MODBUS Application Protocol V1.1b3, 6.3 and 6.4;
 *     MODBUS over serial line V1.02, 2.5.1</a>
 */
public record RegisterQuery(int slave, int function, int register, int registers) {
  /** The number of data bytes in the answer. */
  public int dataBytes() {
    return 2 * registers;
  }

  /** The request as it goes over the line. */
  public Bytes request() {
    byte[] message = {
      (byte) slave,
      (byte) function,
      (byte) (register >>> 8),
      (byte) register,
      (byte) (registers >>> 8),
      (byte) registers
    };
    Bytes body = Bytes.of(message);
    int crc = (int) Crc.MODBUS.of(body);
    return body.plus(Bytes.of(new byte[] {(byte) crc, (byte) (crc >>> 8)}));
  }
}
