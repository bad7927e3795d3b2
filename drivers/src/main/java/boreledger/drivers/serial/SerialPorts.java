package boreledger.drivers.serial;

import com.fazecast.jSerialComm.SerialPort;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The serial ports that the system lists. Ports that it does not list, such as links and
 * pseudo-terminals, can be opened by their path all the same.
 */
public final class SerialPorts {
  private static final String NOT_KNOWN = "Unknown";

  private SerialPorts() {}

  /** All ports listed now, in order of their paths. */
  public static List<PortIdentity> list() {
    return Stream.of(SerialPort.getCommPorts())
        .map(SerialPorts::identity)
        .sorted(Comparator.comparing(PortIdentity::path))
        .toList();
  }

  static PortIdentity identity(SerialPort port) {
    return new PortIdentity(
        port.getSystemPortPath(),
        port.getDescriptivePortName(),
        numberOrNull(port.getVendorID()),
        numberOrNull(port.getProductID()),
        textOrNull(port.getSerialNumber()),
        textOrNull(port.getPortLocation()));
  }

  private static Integer numberOrNull(int number) {
    return number < 0 ? null : number;
  }

  private static String textOrNull(String text) {
    return text == null || text.isBlank() || text.equals(NOT_KNOWN) ? null : text;
  }
}
