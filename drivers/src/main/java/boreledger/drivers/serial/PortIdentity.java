package boreledger.drivers.serial;

/**
 * A serial port and what it is known by.
 *
 * @param path the name to open it by, such as {@code /dev/ttyUSB0} or {@code COM3}
 * @param description what the system calls it
 * @param vendorId the USB vendor number; null when there is none
 * @param productId the USB product number; null when there is none
 * @param serialNumber the device's serial number; null when there is none
 * @param location where it is plugged in; null when not known
 */
public record PortIdentity(
    String path,
    String description,
    Integer vendorId,
    Integer productId,
    String serialNumber,
    String location) {}
