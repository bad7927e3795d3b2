package boreledger.drivers.serial;

import boreledger.drivers.line.LineFault;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * A port as it was known when it was first opened, and how it is known again.
 *
 * <ul>
 *   <li>A device with vendor, product and serial number is itself wherever it is plugged in, unless
 *       another with all three the same was there at the start.
 *   <li>One without a serial number, or with a twin, is itself only at its place.
 *   <li>A port of which the system knows no device, such as a Bluetooth port, a built-in one or a
 *       link to one, is itself under its path, as long as no device is known there.
 * </ul>
 *
 * <p>Anything else is another device, and is never opened in its stead.
 */
final class KnownPort {
  private final String path;
  private final String family;
  private final PortIdentity device;
  private final boolean itselfAnywhere;

  private KnownPort(String path, String family, PortIdentity device, boolean itselfAnywhere) {
    this.path = path;
    this.family = family;
    this.device = device;
    this.itselfAnywhere = itselfAnywhere;
  }

  /** What the system knows of a port that is there. */
  static KnownPort of(String path, SystemPorts ports) {
    String resolved = ports.resolve(path).orElse(path);
    List<PortIdentity> listed = ports.list();
    PortIdentity device = deviceAt(resolved, listed);
    boolean anywhere =
        device != null
            && device.serialNumber() != null
            && listed.stream()
                    .filter(each -> family(each.path()).equals(family(resolved)))
                    .filter(each -> sameNumbers(device, each))
                    .count()
                == 1;
    return new KnownPort(path, family(resolved), device, anywhere);
  }

  /**
   * The path under which the port can be opened now.
   *
   * @return empty while it is not there
   * @throws LineFault if another device is under its path, or it cannot be told from another
   */
  Optional<String> find(SystemPorts ports) throws LineFault {
    Optional<String> resolved = ports.resolve(path);
    List<PortIdentity> listed = ports.list();
    PortIdentity there = resolved.isEmpty() ? null : deviceAt(resolved.get(), listed);
    if (device == null) {
      if (there != null) {
        throw another(there);
      }
      return resolved.map(present -> path);
    }
    if (there != null && isItself(there)) {
      return Optional.of(path);
    }
    List<PortIdentity> alike =
        listed.stream()
            .filter(each -> family(each.path()).equals(family))
            .filter(this::isItself)
            .toList();
    if (alike.size() == 1) {
      return Optional.of(alike.get(0).path());
    } else if (!alike.isEmpty()) {
      throw new LineFault(
          SerialLine.nameOf(path)
              + ": several devices cannot be told apart from it; plug in the gauge alone");
    } else if (resolved.isPresent()) {
      throw another(there);
    }
    return Optional.empty();
  }

  private boolean isItself(PortIdentity other) {
    return sameNumbers(device, other)
        && (itselfAnywhere || Objects.equals(device.location(), other.location()));
  }

  private LineFault another(PortIdentity there) {
    String found = there == null ? "a port without a device" : words(there);
    String wanted = device == null ? "a port without a device" : words(device);
    return new LineFault(
        SerialLine.nameOf(path)
            + ": "
            + found
            + " is there instead of "
            + wanted
            + "; plug in the gauge that was used");
  }

  private static boolean sameNumbers(PortIdentity one, PortIdentity other) {
    return Objects.equals(one.vendorId(), other.vendorId())
        && Objects.equals(one.productId(), other.productId())
        && Objects.equals(one.serialNumber(), other.serialNumber());
  }

  /** The device behind a port; null when the system knows none. */
  private static PortIdentity deviceAt(String resolved, List<PortIdentity> listed) {
    return listed.stream()
        .filter(each -> each.path().equals(resolved))
        .filter(each -> each.vendorId() != null)
        .findFirst()
        .orElse(null);
  }

  /** The ports of one driver: some systems list each device under several. */
  private static String family(String resolved) {
    return resolved.replaceFirst("[.\\d].*", "");
  }

  private static String words(PortIdentity device) {
    String number = device.serialNumber();
    return String.format(
        Locale.ROOT,
        "%s (%04x:%04x, %s)",
        device.description(),
        device.vendorId(),
        device.productId(),
        number == null ? "at place " + device.location() : "serial number " + number);
  }
}
