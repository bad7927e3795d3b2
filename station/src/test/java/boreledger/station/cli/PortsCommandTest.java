package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.serial.PortIdentity;
import java.util.List;
import org.junit.jupiter.api.Test;

class PortsCommandTest {
  @Test
  void aPortStandsWithAllThatItIsKnownBy() {
    PortIdentity usb = new PortIdentity("/dev/ttyUSB0", "Adapter", 0x1209, 0x1, "A7", "1-2.4");

    assertEquals(
        "/dev/ttyUSB0      Adapter, USB 1209:0001, serial number A7, at 1-2.4",
        PortsCommand.words(List.of(usb)));
  }

  @Test
  void whatIsNotKnownOfAPortIsLeftOut() {
    PortIdentity plain = new PortIdentity("/dev/ttyS0", "Physical port", null, null, null, null);

    assertEquals("/dev/ttyS0        Physical port", PortsCommand.words(List.of(plain)));
  }

  @Test
  void aMachineWithoutPortsIsToldWhatToDo() {
    assertTrue(PortsCommand.words(List.of()).contains("Plug the gauge in"));
  }
}
