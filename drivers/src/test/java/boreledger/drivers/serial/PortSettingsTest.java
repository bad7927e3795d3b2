package boreledger.drivers.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.profile.LineSettings.Parity;
import boreledger.drivers.profile.LineSettings.StopBits;
import com.fazecast.jSerialComm.SerialPort;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked of the serial library; a pseudo-terminal takes any settings and proves none. */
@EnabledOnOs(OS.LINUX)
class PortSettingsTest {
  @TempDir Path folder;

  private SerialPort prepared(LineSettings settings) throws Exception {
    try (PtyPair cable = PtyPair.in(folder)) {
      SerialPort port = SerialPort.getCommPort(cable.stationEnd.toString());
      PortSettings.prepare(port, settings);
      return port;
    }
  }

  @Test
  void speedAndDataBitsAreAskedFor() throws Exception {
    SerialPort port = prepared(new LineSettings(4800, 7, Parity.EVEN, StopBits.TWO, true, false));
    assertEquals(4800, port.getBaudRate());
    assertEquals(7, port.getNumDataBits());
    assertEquals(SerialPort.FLOW_CONTROL_DISABLED, port.getFlowControlSettings());
  }

  @ParameterizedTest
  @CsvSource({"NONE, 0", "ODD, 1", "EVEN, 2", "MARK, 3", "SPACE, 4"})
  void parityIsAskedFor(Parity parity, int expected) throws Exception {
    SerialPort port = prepared(new LineSettings(9600, 8, parity, StopBits.ONE, true, true));
    assertEquals(expected, port.getParity());
  }

  @ParameterizedTest
  @CsvSource({"ONE, 1", "ONE_AND_A_HALF, 2", "TWO, 3"})
  void stopBitsAreAskedFor(StopBits stopBits, int expected) throws Exception {
    SerialPort port = prepared(new LineSettings(9600, 8, Parity.NONE, stopBits, true, true));
    assertEquals(expected, port.getNumStopBits());
  }
}
