package buzzout.probe;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Finds the probe by asking each USB port who it is. Other ports are left alone: who knows what hangs there. After an
 * unplug the port of before comes first, then the one with its USB identity, then all others.
 */
public final class ProbeFinder implements LinkSource {
    /** A board that resets when its port is opened sits in its bootloader for up to two seconds. */
    private static final int ASK_TIMES = 6;

    private static final int ANSWER_MILLIS = 500;

    private final Supplier<List<Port>> list;
    private final NamedPort.Opener opener;
    private final Stopwatch time;
    private Optional<Port> last = Optional.empty();

    /**
     * Looks at the ports of this machine.
     *
     * @param raiseDtr whether to tell the boards that someone listens; some boards reset on it
     */
    public ProbeFinder(boolean raiseDtr) {
        this(SerialPorts::list, at -> SerialPorts.open(at, raiseDtr), Stopwatch.real());
    }

    ProbeFinder(Supplier<List<Port>> list, NamedPort.Opener opener, Stopwatch time) {
        this.list = list;
        this.opener = opener;
        this.time = time;
    }

    @Override
    public Stopwatch time() {
        return time;
    }

    @Override
    public Opened open() throws LinkDown {
        List<Port> candidates = list.get().stream()
                .filter(port -> port.usb().isPresent())
                .sorted(Comparator.comparing(this::unlikeLast))
                .toList();
        String why = candidates.isEmpty() ? NothingAnswers.NO_PORT : NothingAnswers.among(candidates);
        for (Port port : candidates) {
            try {
                ByteLink link = opener.open(port.path());
                if (isProbe(link)) {
                    last = Optional.of(port);
                    return new Opened(port.path(), link);
                }
            } catch (LinkDown down) {
                why = down.why();
            }
        }
        throw new LinkDown(why);
    }

    private int unlikeLast(Port port) {
        boolean samePath = last.map(Port::path).equals(Optional.of(port.path()));
        boolean sameDevice = last.flatMap(Port::usb).equals(port.usb());
        return (samePath ? 0 : 2) + (sameDevice ? 0 : 1);
    }

    /** Leaves the link open if it is. */
    private boolean isProbe(ByteLink link) throws LinkDown {
        boolean probe = false;
        try {
            link.write(Line.END_OF_ANY);
            for (int asked = 0; asked < ASK_TIMES && !probe; asked++) {
                link.write(Line.encode(Handshake.WHO));
                probe = introducesItself(link);
            }
            return probe;
        } finally {
            if (!probe) {
                link.close();
            }
        }
    }

    private boolean introducesItself(ByteLink link) throws LinkDown {
        LineDecoder decoder = new LineDecoder();
        byte[] buffer = new byte[512];
        long end = time.micros() + ANSWER_MILLIS * 1000L;
        for (long now = time.micros(); now < end; now = time.micros()) {
            int count = link.read(buffer, (int) Math.max(1, (end - now) / 1000));
            if (decoder.take(buffer, count).stream().anyMatch(ProbeFinder::isIntroduction)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isIntroduction(Received received) {
        if (received instanceof Received.Good line) {
            ProbeMessage message = ProbeMessages.parse(line.body());
            return message instanceof ProbeMessage.Iam || message instanceof ProbeMessage.OtherProtocol;
        }
        return false;
    }
}
