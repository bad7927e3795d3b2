package boreledger.drivers.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.io.File;
import java.util.Set;

/** Why a port did not open, in words. */
final class PortFault {
  /** EAGAIN, EBUSY, and ENOENT, which the library leaves when this very program holds the port. */
  private static final Set<Integer> LOCKED = Set.of(2, 11, 16);

  private PortFault() {}

  static String reason(String path, SerialPort port) {
    int code = port.getLastErrorCode();
    File file = new File(port.getSystemPortPath());
    if (path.startsWith("/") && !file.exists()) {
      return "it has just gone; plug it in again";
    }
    if (path.startsWith("/") && !(file.canRead() && file.canWrite())) {
      return "you may not use it; join the group that owns " + file + ", often dialout";
    }
    if (LOCKED.contains(code)) {
      return "this or another program has it open; close it there first";
    }
    return "system error " + code + "; is it a serial port, and does it know these settings?";
  }
}
