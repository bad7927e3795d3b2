package boreledger.drivers.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import com.fazecast.jSerialComm.SerialPort;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class SerialPortsTest {
  @TempDir Path folder;

  @Test
  void portsAreListedInOrderOfTheirPaths() {
    List<PortIdentity> ports = SerialPorts.list();
    assertEquals(ports.stream().sorted(Comparator.comparing(PortIdentity::path)).toList(), ports);
    ports.forEach(port -> assertFalse(port.path().isBlank()));
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void whatIsNotKnownOfAPortIsNull() throws Exception {
    try (PtyPair cable = PtyPair.in(folder)) {
      PortIdentity identity =
          SerialPorts.identity(SerialPort.getCommPort(cable.stationEnd.toString()));
      assertEquals(cable.stationEnd.toRealPath().toString(), identity.path());
      assertNull(identity.vendorId());
      assertNull(identity.productId());
      assertNull(identity.serialNumber());
    }
  }
}
