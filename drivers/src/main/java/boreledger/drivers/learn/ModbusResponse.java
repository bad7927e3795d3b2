package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;

/**
 * A Modbus RTU response to a request to read registers: slave, function 3 or 4, number of data
 * bytes, data, CRC (MODBUS Application Protocol V1.1b3, 6.3 and 6.4; MODBUS over serial line V1.02,
 * 2.5.1).
 */
final class ModbusResponse {
  static final int HEADER_BYTES = 3;
  static final int CRC_BYTES = 2;

  private ModbusResponse() {}

  static boolean isOne(Bytes frame) {
    int size = frame.size();
    return size > HEADER_BYTES + CRC_BYTES
        && (frame.at(1) == 3 || frame.at(1) == 4)
        && frame.at(2) == size - HEADER_BYTES - CRC_BYTES
        && crc(frame, size - CRC_BYTES) == (frame.at(size - 2) | frame.at(size - 1) << 8);
  }

  private static int crc(Bytes frame, int end) {
    int register = 0xffff;
    for (int i = 0; i < end; i++) {
      register ^= frame.at(i);
      for (int bit = 0; bit < 8; bit++) {
        register = (register & 1) == 1 ? register >> 1 ^ 0xa001 : register >> 1;
      }
    }
    return register;
  }
}
