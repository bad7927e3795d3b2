package boreledger.station.app;

import boreledger.drivers.learn.PortOpener;
import boreledger.drivers.learn.StepLearner;
import boreledger.drivers.net.TcpAddress;
import boreledger.drivers.net.TcpLine;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.serial.SerialLine;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * Where a gauge is learned: a port, and what can be tried there.
 *
 * @param opener opens it
 * @param learner a learner that tries its settings
 */
record LessonPort(PortOpener opener, StepLearner learner) {
  /** The port of a path or an address. A serial device server sets its serial side itself. */
  static LessonPort of(String port) throws UsageProblem {
    DoubleSupplier clockS = LineClock.fromNow();
    if (port.startsWith(TcpAddress.SCHEME)) {
      TcpAddress address = PortSource.address(port, "--port");
      return new LessonPort(
          settings -> TcpLine.open(address, clockS),
          new StepLearner(List.of(LineSettings.DEFAULT)));
    }
    return new LessonPort(settings -> SerialLine.open(port, settings, clockS), new StepLearner());
  }
}
