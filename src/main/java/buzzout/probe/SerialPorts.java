package buzzout.probe;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The serial ports of this machine. Listing them takes a moment: not for a thread that draws. */
public final class SerialPorts {
    /** For boards with a UART; USB of its own ignores it. */
    static final int BAUD = 115_200;

    static {
        NativeLibrary.ready();
    }

    private SerialPorts() {}

    /** USB ports first, then by path. */
    public static List<Port> list() {
        return Stream.of(SerialPort.getCommPorts())
                .filter(port -> !port.getSystemPortPath().startsWith("/dev/tty."))
                .map(SerialPorts::describe)
                .sorted(Comparator.comparing((Port port) -> port.usb().isEmpty())
                        .thenComparing(Port::path))
                .toList();
    }

    /**
     * Opens a port by its path, a pty's too, with a fresh port object: an old one does not survive an unplug.
     *
     * @param raiseDtr whether to tell the board that someone listens; some boards reset on it
     * @throws LinkDown with a sentence that says what to do
     */
    public static ByteLink open(String path, boolean raiseDtr) throws LinkDown {
        SerialPort port;
        try {
            port = SerialPort.getCommPort(exact(path));
        } catch (SerialPortInvalidPortException none) {
            throw new LinkDown(PortTrouble.missing(path));
        }
        port.setComPortParameters(BAUD, 8, SerialPort.ONE_STOP_BIT, SerialPort.NO_PARITY);
        port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
        port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, SerialLink.READ_MILLIS, 0);
        if (raiseDtr) {
            port.setDTR();
        } else {
            port.clearDTR();
        }
        if (!port.openPort()) {
            throw new LinkDown(PortTrouble.notOpened(path, port.getLastErrorCode()));
        }
        return new SerialLink(path, port);
    }

    /**
     * The path without links on its way: of a path that leads nowhere, the library takes the last name for one under
     * {@code /dev}, which may be another port or the person's own terminal. A bare name, such as {@code COM3}, stays.
     */
    private static String exact(String path) throws LinkDown {
        if (path.indexOf('/') < 0) {
            return path;
        }
        try {
            return Path.of(path).toRealPath().toString();
        } catch (NoSuchFileException | InvalidPathException none) {
            throw new LinkDown(PortTrouble.missing(path));
        } catch (IOException unknown) {
            throw new LinkDown(PortTrouble.permission(path).orElseGet(() -> PortTrouble.missing(path)));
        }
    }

    private static Port describe(SerialPort port) {
        Optional<Port.Usb> usb = port.getVendorID() < 0
                ? Optional.empty()
                : Optional.of(new Port.Usb(port.getVendorID(), port.getProductID(), known(port.getSerialNumber())));
        return new Port(Printable.of(port.getSystemPortPath()), Printable.of(port.getPortDescription()), usb);
    }

    private static String known(String serialNumber) {
        return serialNumber.equals("Unknown") ? "" : Printable.of(serialNumber);
    }
}
