package buzzout.probe;

import java.util.Locale;
import java.util.Optional;

/**
 * A serial port of this machine. Its words come from the device and are made printable.
 *
 * @param path what to open it by, such as {@code /dev/ttyACM0} or {@code COM3}
 * @param description what the device calls itself
 * @param usb who it is on the bus, where it is a USB device
 */
public record Port(String path, String description, Optional<Usb> usb) {
    /**
     * A device on the bus.
     *
     * @param serialNumber empty where it has none
     */
    public record Usb(int vendor, int product, String serialNumber) {
        /** Such as {@code 2341:8036}. */
        public String id() {
            return String.format(Locale.ROOT, "%04X:%04X", vendor, product);
        }
    }
}
