package boreledger.station.cli;

import boreledger.drivers.serial.PortIdentity;
import boreledger.drivers.serial.SerialPorts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The serial ports of this machine. */
@Command(
    name = "ports",
    description = "Lists the serial ports with what identifies them.",
    footer = {
      "",
      "A port that is not listed, such as a link, can be named by its path all the same.",
      "Example: boreledger ports"
    })
final class PortsCommand implements Callable<Integer> {
  @Mixin private Answer answer;

  /** The answer. */
  record Ports(List<PortIdentity> ports) {}

  @Override
  public Integer call() {
    List<PortIdentity> ports = SerialPorts.list();
    answer.print(new Ports(ports), words(ports));
    return ExitStatus.DONE;
  }

  static String words(List<PortIdentity> ports) {
    return ports.isEmpty()
        ? "No serial port found. Plug the gauge in, or pair and bind it, and look again."
        : ports.stream().map(PortsCommand::line).collect(Collectors.joining("\n"));
  }

  private static String line(PortIdentity port) {
    List<String> facts = new ArrayList<>();
    facts.add(port.description());
    if (port.vendorId() != null && port.productId() != null) {
      // Four hexadecimal digits each, as the system's own list of USB devices gives them.
      facts.add(String.format(Locale.ROOT, "USB %04x:%04x", port.vendorId(), port.productId()));
    }
    if (port.serialNumber() != null) {
      facts.add("serial number " + port.serialNumber());
    }
    if (port.location() != null) {
      facts.add("at " + port.location());
    }
    return String.format(Locale.ROOT, "%-16s  %s", port.path(), String.join(", ", facts));
  }
}
