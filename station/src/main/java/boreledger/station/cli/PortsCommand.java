package boreledger.station.cli;

import boreledger.drivers.serial.PortIdentity;
import boreledger.drivers.serial.SerialPorts;
import java.util.List;
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

  private static String words(List<PortIdentity> ports) {
    return ports.isEmpty()
        ? "No serial port found. Plug the gauge in, or pair and bind it, and look again."
        : ports.stream().map(Object::toString).collect(Collectors.joining("\n"));
  }
}
