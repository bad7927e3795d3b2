package boreledger.drivers.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.queue.CaptureQueue;
import boreledger.drivers.queue.GaugeReader;
import boreledger.drivers.queue.QueueItem;
import com.fazecast.jSerialComm.SerialPort;
import com.ghgande.j2mod.modbus.Modbus;
import com.ghgande.j2mod.modbus.procimg.SimpleInputRegister;
import com.ghgande.j2mod.modbus.procimg.SimpleProcessImage;
import com.ghgande.j2mod.modbus.procimg.SimpleRegister;
import com.ghgande.j2mod.modbus.slave.ModbusSlave;
import com.ghgande.j2mod.modbus.slave.ModbusSlaveFactory;
import com.ghgande.j2mod.modbus.util.SerialParameters;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Our reader asks a Modbus RTU server that is not ours (j2mod 3.3.0) over a pair of
 * pseudo-terminals.
 */
@EnabledOnOs(OS.LINUX)
class ModbusServerTest {
  private static final int UNIT = 17;
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  @TempDir Path folder;
  private PtyPair cable;
  private ModbusSlave server;
  private final SimpleProcessImage registers = new SimpleProcessImage(UNIT);
  private final CaptureQueue queue = new CaptureQueue(100);

  @BeforeEach
  void serve() throws Exception {
    cable = PtyPair.in(folder);
    for (int i = 0; i < 8; i++) {
      registers.addRegister(new SimpleRegister(0));
      registers.addInputRegister(new SimpleInputRegister(0));
    }
    SerialParameters parameters = new SerialParameters();
    parameters.setPortName(cable.gaugeEnd.toString());
    parameters.setBaudRate(9600);
    parameters.setDatabits(8);
    parameters.setParity(SerialPort.NO_PARITY);
    parameters.setStopbits(SerialPort.ONE_STOP_BIT);
    parameters.setEncoding(Modbus.SERIAL_ENCODING_RTU);
    server = ModbusSlaveFactory.createSerialSlave(parameters);
    server.addProcessImage(UNIT, registers);
    server.open();
  }

  @AfterEach
  void close() {
    queue.close();
    server.close();
    cable.close();
  }

  private static GaugeProfile profile(String decode) throws Exception {
    return GaugeProfiles.parse(
        "g",
        """
        format = "boreledger-gauge/1"
        name = "Registers"
        reads = "size"
        unit = "mm"
        resolution_mm = 0.001
        max_error_mm = 0.002
        [frame]
        kind = "modbus-rtu"
        [decode]
        kind = "modbus-registers"
        slave = 17
        %s
        [ask]
        every_ms = 10
        [pick]
        rule = "press"
        """
            .formatted(decode));
  }

  private Thread read(GaugeProfile profile) throws Exception {
    SerialLine line =
        SerialLine.open(
            cable.stationEnd.toString(), LineSettings.DEFAULT, () -> System.nanoTime() * 1e-9);
    return new GaugeReader("gap", line, new Gauge(profile, null), queue, profile.ask()).start();
  }

  private GaugeEvent next() throws InterruptedException {
    return ((QueueItem.Said) queue.poll(PATIENCE).orElseThrow()).event();
  }

  /** Takes samples until the expected one comes; only the one before it may come first. */
  private void assertComes(double expectedMm, double beforeMm) throws InterruptedException {
    long giveUpNs = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < giveUpNs) {
      GaugeEvent event = next();
      assertFalse(event instanceof GaugeEvent.Bad, event.toString());
      if (event instanceof GaugeEvent.Live live) {
        double valueMm = live.sample().valueMm();
        if (valueMm == expectedMm) {
          return;
        }
        assertEquals(beforeMm, valueMm);
      }
    }
    throw new AssertionError(expectedMm + " mm never came");
  }

  private void stop(Thread reader) throws InterruptedException {
    queue.close();
    reader.join(PATIENCE.toMillis());
    assertFalse(reader.isAlive());
  }

  @Test
  void holdingRegisterIsReadAsItChanges() throws Exception {
    Thread reader =
        read(profile("function=3\nregister=2\nregisters=1\ntype='integer'\nscale=0.001"));
    assertComes(0, 0);
    int[] counts = {1, -1, 32_767, -32_768, 480};
    double beforeMm = 0;
    for (int count : counts) {
      registers.getRegister(2).setValue(count);
      assertComes(count / 1000.0, beforeMm);
      beforeMm = count / 1000.0;
    }
    stop(reader);
  }

  @Test
  void inputRegistersHoldAFloat() throws Exception {
    // -12.5 as a single is c1480000: IEEE 754, -1.5625 times 2 to the 3rd.
    ((SimpleInputRegister) registers.getInputRegister(4)).setValue(0xC148);
    Thread reader = read(profile("function=4\nregister=4\nregisters=2\ntype='float'"));
    assertComes(-12.5, -12.5);
    stop(reader);
  }

  @Test
  void wordsMayComeInEitherOrder() throws Exception {
    registers.getRegister(0).setValue(0x86A0);
    registers.getRegister(1).setValue(0x0001);
    Thread reader =
        read(
            profile(
                "function=3\nregister=0\nregisters=2\ntype='integer'\nscale=0.001\n"
                    + "word_order='little'"));
    assertComes(100, 100);
    stop(reader);
  }

  @Test
  void registerThatIsNotThereGivesTheServersException() throws Exception {
    Thread reader = read(profile("function=3\nregister=100\nregisters=2\ntype='integer'\nscale=1"));
    GaugeEvent event = next();
    assertEquals(
        "slave 17 answers with exception 2, illegal data address",
        ((GaugeEvent.Bad) event).rejected().why());
    stop(reader);
  }

  @Test
  void slaveThatIsNotThereIsToldAsNoAnswer() throws Exception {
    GaugeProfile silent =
        GaugeProfiles.parse(
            "g",
            profile("function=3\nregister=0\nregisters=1\ntype='integer'\nscale=1")
                .source()
                .text()
                .replace("slave = 17", "slave = 18")
                .replace("every_ms = 10", "every_ms = 10\nanswer_within_ms = 100"));
    Thread reader = read(silent);
    String why = ((GaugeEvent.Bad) next()).rejected().why();
    assertTrue(why.startsWith("no answer to 1203000000018"), why);
    stop(reader);
  }
}
