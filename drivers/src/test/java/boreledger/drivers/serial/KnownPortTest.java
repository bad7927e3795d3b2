package boreledger.drivers.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.drivers.line.LineFault;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which port is the same device again, on an invented system. */
class KnownPortTest {
  private static final int VENDOR = 0xf055;
  private static final int PRODUCT = 0x1234;

  private final Bench bench = new Bench();

  private static final class Bench implements SystemPorts {
    final List<PortIdentity> listed = new ArrayList<>();
    final Map<String, String> paths = new HashMap<>();

    @Override
    public List<PortIdentity> list() {
      return List.copyOf(listed);
    }

    @Override
    public Optional<String> resolve(String path) {
      return Optional.ofNullable(paths.get(path));
    }

    Bench plug(String path, int product, String serialNumber, String location) {
      listed.add(new PortIdentity(path, "bore gauge", VENDOR, product, serialNumber, location));
      paths.put(path, path);
      return this;
    }

    Bench plainPort(String path) {
      listed.add(new PortIdentity(path, "port", null, null, null, null));
      paths.put(path, path);
      return this;
    }

    void clear() {
      listed.clear();
      paths.clear();
    }
  }

  private Optional<String> found(KnownPort known) throws LineFault {
    return known.find(bench);
  }

  private String refusal(KnownPort known) {
    return assertThrows(LineFault.class, () -> known.find(bench)).getMessage();
  }

  @Test
  void absentDeviceIsNotThereYet() throws Exception {
    KnownPort known =
        KnownPort.of("/dev/ttyUSB0", bench.plug("/dev/ttyUSB0", PRODUCT, "A7", "1-1"));
    bench.clear();
    assertEquals(Optional.empty(), found(known));
  }

  @Test
  void deviceWithASerialNumberIsFoundUnderAnotherNameAtAnotherPlace() throws Exception {
    KnownPort known =
        KnownPort.of("/dev/ttyUSB0", bench.plug("/dev/ttyUSB0", PRODUCT, "A7", "1-1"));
    bench.clear();
    bench.plug("/dev/ttyUSB0", PRODUCT, "B8", "1-1").plug("/dev/ttyUSB3", PRODUCT, "A7", "1-4");
    assertEquals(Optional.of("/dev/ttyUSB3"), found(known));
  }

  @Test
  void deviceWithAnotherSerialNumberIsRefused() throws Exception {
    KnownPort known =
        KnownPort.of("/dev/ttyUSB0", bench.plug("/dev/ttyUSB0", PRODUCT, "A7", "1-1"));
    bench.clear();
    bench.plug("/dev/ttyUSB0", PRODUCT, "B8", "1-1");
    assertEquals(
        "serial port /dev/ttyUSB0: bore gauge (f055:1234, serial number B8) is there instead of"
            + " bore gauge (f055:1234, serial number A7); plug in the gauge that was used",
        refusal(known));
  }

  @Test
  void deviceOfAnotherKindIsRefused() throws Exception {
    KnownPort known =
        KnownPort.of("/dev/ttyUSB0", bench.plug("/dev/ttyUSB0", PRODUCT, null, "1-1"));
    bench.clear();
    bench.plug("/dev/ttyUSB0", 0x9999, null, "1-1");
    assertEquals(
        "serial port /dev/ttyUSB0: bore gauge (f055:9999, at place 1-1) is there instead of bore"
            + " gauge (f055:1234, at place 1-1); plug in the gauge that was used",
        refusal(known));
  }

  @Test
  void deviceWithoutASerialNumberIsFoundAtItsPlaceUnderAnotherName() throws Exception {
    KnownPort known =
        KnownPort.of("/dev/ttyUSB0", bench.plug("/dev/ttyUSB0", PRODUCT, null, "1-1"));
    bench.clear();
    bench.plug("/dev/ttyUSB1", PRODUCT, null, "1-1");
    assertEquals(Optional.of("/dev/ttyUSB1"), found(known));
  }

  @Test
  void deviceWithoutASerialNumberAtAnotherPlaceMayBeAnotherAndIsNotOpened() throws Exception {
    KnownPort known =
        KnownPort.of("/dev/ttyUSB0", bench.plug("/dev/ttyUSB0", PRODUCT, null, "1-1"));
    bench.clear();
    bench.plug("/dev/ttyUSB1", PRODUCT, null, "1-2");
    assertEquals(Optional.empty(), found(known));
    bench.clear();
    bench.plug("/dev/ttyUSB0", PRODUCT, null, "1-2");
    assertThrows(LineFault.class, () -> found(known));
  }

  @Test
  void twinsWithTheSameSerialNumberAreToldByTheirPlace() throws Exception {
    bench.plug("/dev/ttyUSB0", PRODUCT, "0001", "1-1").plug("/dev/ttyUSB1", PRODUCT, "0001", "1-2");
    KnownPort known = KnownPort.of("/dev/ttyUSB0", bench);
    bench.clear();
    bench.plug("/dev/ttyUSB0", PRODUCT, "0001", "1-2");
    assertThrows(LineFault.class, () -> found(known), "the twin alone");
    bench.plug("/dev/ttyUSB1", PRODUCT, "0001", "1-1");
    assertEquals(Optional.of("/dev/ttyUSB1"), found(known));
  }

  @Test
  void twinsThatOnlyAppearLaterAreNotGuessedAt() throws Exception {
    KnownPort known =
        KnownPort.of("/dev/ttyUSB0", bench.plug("/dev/ttyUSB0", PRODUCT, "0001", "1-1"));
    bench.clear();
    bench.plug("/dev/ttyUSB4", PRODUCT, "0001", "1-3").plug("/dev/ttyUSB5", PRODUCT, "0001", "1-4");
    assertEquals(
        "serial port /dev/ttyUSB0: several devices cannot be told apart from it; plug in the gauge"
            + " alone",
        refusal(known));
  }

  @Test
  void linkIsFollowedAnewEachTime() throws Exception {
    bench.plug("/dev/ttyUSB0", PRODUCT, "A7", "1-1").paths.put("/dev/gauge", "/dev/ttyUSB0");
    KnownPort known = KnownPort.of("/dev/gauge", bench);
    bench.clear();
    bench.plug("/dev/ttyUSB2", PRODUCT, "A7", "1-1").paths.put("/dev/gauge", "/dev/ttyUSB2");
    assertEquals(Optional.of("/dev/gauge"), found(known));
  }

  @Test
  void oneDeviceListedByTwoDriversIsOneDevice() throws Exception {
    bench.plug("/dev/cu.usb10", PRODUCT, "A7", "1-1").plug("/dev/tty.usb10", PRODUCT, "A7", "1-1");
    KnownPort known = KnownPort.of("/dev/cu.usb10", bench);
    bench.clear();
    bench.plug("/dev/cu.usb20", PRODUCT, "A7", "1-2").plug("/dev/tty.usb20", PRODUCT, "A7", "1-2");
    assertEquals(Optional.of("/dev/cu.usb20"), found(known));
  }

  @Test
  void portWithoutADeviceIsItselfUnderItsPath() throws Exception {
    KnownPort known = KnownPort.of("/dev/rfcomm0", bench.plainPort("/dev/rfcomm0"));
    bench.clear();
    assertEquals(Optional.empty(), found(known));
    bench.paths.put("/dev/rfcomm0", "/dev/rfcomm0");
    assertEquals(Optional.of("/dev/rfcomm0"), found(known));
  }

  @Test
  void pathWithoutADeviceThatNowNamesOneIsRefused() throws Exception {
    bench.paths.put("/tmp/gauge", "/dev/pts/7");
    KnownPort known = KnownPort.of("/tmp/gauge", bench);
    bench.plug("/dev/ttyUSB0", PRODUCT, "A7", "1-1").paths.put("/tmp/gauge", "/dev/ttyUSB0");
    assertEquals(
        "serial port /tmp/gauge: bore gauge (f055:1234, serial number A7) is there instead of a"
            + " port without a device; plug in the gauge that was used",
        refusal(known));
  }

  @Test
  void pathOfADeviceThatNowNamesAPortWithoutOneIsRefused() throws Exception {
    bench.plug("/dev/ttyUSB0", PRODUCT, "A7", "1-1").paths.put("/tmp/gauge", "/dev/ttyUSB0");
    KnownPort known = KnownPort.of("/tmp/gauge", bench);
    bench.clear();
    bench.paths.put("/tmp/gauge", "/dev/pts/7");
    assertThrows(LineFault.class, () -> found(known));
  }
}
