package boreledger.drivers.serial;

import boreledger.drivers.profile.LineSettings;
import com.fazecast.jSerialComm.SerialPort;
import java.util.ArrayList;
import java.util.List;

/** A profile's line settings in the serial library's terms. */
final class PortSettings {
  private PortSettings() {}

  /** Tells a port that is not open yet how to open. */
  static void prepare(SerialPort port, LineSettings settings) {
    port.setComPortParameters(
        settings.baud(),
        settings.dataBits(),
        stopBits(settings.stopBits()),
        parity(settings.parity()));
    port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
    // Opening would raise lines that are to stay low, and that resets some gauges.
    setModemLines(port, settings);
  }

  /** Sets the modem lines; a note for each that an open port does not have. */
  static List<String> setModemLines(SerialPort port, LineSettings settings) {
    List<String> notes = new ArrayList<>();
    if (!(settings.dtr() ? port.setDTR() : port.clearDTR())) {
      notes.add("the port has no DTR line to set");
    }
    if (!(settings.rts() ? port.setRTS() : port.clearRTS())) {
      notes.add("the port has no RTS line to set");
    }
    return notes;
  }

  private static int parity(LineSettings.Parity parity) {
    return switch (parity) {
      case NONE -> SerialPort.NO_PARITY;
      case EVEN -> SerialPort.EVEN_PARITY;
      case ODD -> SerialPort.ODD_PARITY;
      case MARK -> SerialPort.MARK_PARITY;
      case SPACE -> SerialPort.SPACE_PARITY;
    };
  }

  private static int stopBits(LineSettings.StopBits stopBits) {
    return switch (stopBits) {
      case ONE -> SerialPort.ONE_STOP_BIT;
      case ONE_AND_A_HALF -> SerialPort.ONE_POINT_FIVE_STOP_BITS;
      case TWO -> SerialPort.TWO_STOP_BITS;
    };
  }
}
