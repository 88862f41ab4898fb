package buzzout.probe;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The port that the person named. After an unplug it is looked for at the same path, else by the same USB identity, as
 * the system may number it anew, unless two boards have it.
 */
public final class NamedPort implements LinkSource {
    private final String path;
    private final Supplier<List<Port>> list;
    private final Opener opener;
    private Optional<Port.Usb> usb = Optional.empty();

    /** Opens a port by its path. */
    interface Opener {
        ByteLink open(String path) throws LinkDown;
    }

    /**
     * A port of this machine.
     *
     * @param path its path, a pty's too
     * @param raiseDtr whether to tell the board that someone listens; some boards reset on it
     */
    public NamedPort(String path, boolean raiseDtr) {
        this(path, SerialPorts::list, at -> SerialPorts.open(at, raiseDtr));
    }

    NamedPort(String path, Supplier<List<Port>> list, Opener opener) {
        this.path = path;
        this.list = list;
        this.opener = opener;
    }

    @Override
    public Opened open() throws LinkDown {
        try {
            Opened opened = new Opened(Printable.of(path), opener.open(path));
            usb = identity();
            return opened;
        } catch (LinkDown down) {
            Optional<String> moved = movedTo();
            if (moved.isEmpty()) {
                throw down;
            }
            return new Opened(moved.get(), opener.open(moved.get()));
        }
    }

    private Optional<Port.Usb> identity() {
        return list.get().stream()
                .filter(port -> port.path().equals(path))
                .findFirst()
                .flatMap(Port::usb);
    }

    private Optional<String> movedTo() {
        if (usb.isEmpty()) {
            return Optional.empty();
        }
        List<String> alike = list.get().stream()
                .filter(port -> port.usb().equals(usb))
                .map(Port::path)
                .toList();
        // Of boards that say the same of themselves, any but the right one would be another board's session.
        return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
    }
}
