package buzzout.probe;

import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Keeps talking to a probe: opens a link, converses, opens it again after an unplug. Whoever calls drives it, in the
 * source's own time; {@link LiveProbe} is a thread that does.
 */
public final class ProbeTalk implements AutoCloseable {
    private static final int READ_MILLIS = 100;
    private static final long REOPEN_MICROS = 1_000_000;

    private final LinkSource source;
    private final Conversation conversation;
    private final byte[] buffer = new byte[4096];
    private final Object pause = new Object();
    private Optional<Open> open = Optional.empty();
    private String trouble = "";

    private record Open(ByteLink link, LineDecoder decoder) {}

    public ProbeTalk(Plan plan, LinkSource source) {
        this(plan, source, SettleTime.USUAL);
    }

    /** Talks with another settle time. */
    public ProbeTalk(Plan plan, LinkSource source, SettleTime settle) {
        this.source = source;
        this.conversation = new Conversation(plan, settle);
    }

    /** Talks for so many milliseconds of the source's time, and returns what happened. */
    public List<ProbeEvent> runFor(int millis) throws InterruptedException {
        List<ProbeEvent> events = new ArrayList<>();
        long end = source.time().micros() + millis * 1000L;
        for (long left = end - source.time().micros();
                left > 0;
                left = end - source.time().micros()) {
            events.addAll(step(left));
        }
        return events;
    }

    /** Waits a moment for the next bytes, or for the next attempt to open a link, and returns what happened. */
    public List<ProbeEvent> step() throws InterruptedException {
        return step(Long.MAX_VALUE);
    }

    private List<ProbeEvent> step(long mostMicros) throws InterruptedException {
        List<ProbeEvent> events = new ArrayList<>();
        try {
            if (open.isPresent()) {
                int most = (int) Math.min(READ_MILLIS, (mostMicros + 999) / 1000);
                listen(open.get(), most, events);
            } else {
                LinkSource.Opened opened = source.open();
                trouble = "";
                open = Optional.of(new Open(opened.link(), new LineDecoder()));
                opened.link().write(Line.END_OF_ANY);
                follow(conversation.opened(opened.port(), source.time().micros()), opened.link(), events);
            }
        } catch (LinkDown down) {
            boolean wasOpen = open.isPresent();
            close();
            if (wasOpen || !down.why().equals(trouble)) {
                trouble = down.why();
                events.add(new ProbeEvent.LinkLost(trouble));
            }
            if (!wasOpen) {
                rest(Math.min(REOPEN_MICROS, mostMicros));
            }
        }
        return events;
    }

    private void listen(Open at, int timeoutMillis, List<ProbeEvent> events) throws LinkDown {
        int count = at.link().read(buffer, timeoutMillis);
        for (Received received : at.decoder().take(buffer, count)) {
            follow(conversation.heard(received, source.time().micros()), at.link(), events);
        }
        follow(conversation.tick(source.time().micros()), at.link(), events);
    }

    private static void follow(Conversation.Turn turn, ByteLink link, List<ProbeEvent> events) throws LinkDown {
        events.addAll(turn.events());
        for (String line : turn.lines()) {
            link.write(Line.encode(line));
        }
    }

    private void rest(long micros) throws InterruptedException {
        synchronized (pause) {
            source.time().waitOn(pause, micros);
        }
    }

    @Override
    public void close() {
        open.ifPresent(at -> at.link().close());
        open = Optional.empty();
    }
}
