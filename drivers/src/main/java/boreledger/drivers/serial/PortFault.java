package boreledger.drivers.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/** Why a port did not open, in words. */
final class PortFault {
  /** EAGAIN, EBUSY, and ENOENT, which the library leaves when this very program holds the port. */
  private static final Set<Integer> LOCKED = Set.of(2, 11, 16);

  private PortFault() {}

  static String reason(String path, SerialPort port) {
    int code = port.getLastErrorCode();
    Path file = Path.of(port.getSystemPortPath());
    if (!Files.exists(file) && path.startsWith("/")) {
      return "it has just gone; plug it in again";
    }
    if (path.startsWith("/") && !(Files.isReadable(file) && Files.isWritable(file))) {
      return "you may not use it; join the group that owns " + file + ", often dialout";
    }
    if (LOCKED.contains(code)) {
      return "another program has it; close that one first";
    }
    return "system error " + code + "; is another program using it, or is it no serial port?";
  }
}
