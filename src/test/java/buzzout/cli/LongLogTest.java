package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.journal.Journal;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A log of a day is diagnosed in a small heap and in a time that grows no faster than the log does: 10,000 events in two
 * ways, and a million in four with {@code -Dbuzzout.campaign=full}.
 */
@Timeout(900) // against hanging only
class LongLogTest {
    private static final boolean ALL = "full".equals(System.getProperty("buzzout.campaign"));
    private static final int EVENTS = ALL ? 1_000_000 : 10_000;
    private static final String HEAP = ALL ? "128m" : "24m";
    private static final int AT_ONCE = 5_000;
    private static final long SEED = 8;

    private final LoadedPlan loaded = LoadedPlan.quayside();
    private final Plan plan = loaded.plan();

    @TempDir
    Path folder;

    /** What the events are. */
    enum Kind {
        /** Keys, one a second. */
        PRESSES,
        /** One key, whose contact opens and closes too slowly for a bounce. */
        CHATTER,
        /** A key that is held and drops out while the plate is flexed. */
        DROPOUTS,
        /** A whole row that closes and opens at once, as when it meets another net. */
        SHORTS
    }

    static Stream<Kind> kinds() {
        return ALL ? Stream.of(Kind.values()) : Stream.of(Kind.CHATTER, Kind.DROPOUTS);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void is_diagnosed_in_a_small_heap(Kind kind) throws Exception {
        Path log = folder.resolve("long.jsonl");
        write(kind, log);
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Xmx" + HEAP,
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "diagnose",
                log.toString());
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(1, TimeUnit.MINUTES));
        long millis = (System.nanoTime() - start) / 1_000_000;
        assertTrue(process.exitValue() <= Status.FINDINGS, said);
        assertTrue(said.contains(loaded.plan().name()), said);
        System.out.println("figure: log of " + EVENTS + " events, " + kind + ", diagnosed | " + millis
                + " ms in a heap of " + HEAP + " | ends within that heap");
        assertEquals(-1, said.indexOf("failed"), said);
    }

    private void write(Kind kind, Path log) throws IOException {
        Random random = new Random(SEED);
        try (Journal journal =
                Journal.create(log, SessionLogs.header(loaded, Optional.empty(), Optional.empty()), plan)) {
            journal.append(List.of(
                    new Event.FromProbe(1, new ProbeEvent.Found(new Identity(1, "1", "chip", 26, 1), "port")),
                    new Event.FromProbe(1, new ProbeEvent.WholeState(0, Pairs.NONE)),
                    new Event.ByPerson(1_501, new Action.QuietCheckDone())));
            if (kind == Kind.DROPOUTS) {
                journal.append(new Event.ByPerson(1_600, new Action.FlexBegun()));
            }
            long micros = 2_000_000;
            List<Event> events = new ArrayList<>();
            for (int made = 0; made < EVENTS; ) {
                int from = events.size();
                switch (kind) {
                    case PRESSES -> micros = press(events, micros + 1_000_000, key(random.nextInt(46)), 90_000);
                    case CHATTER -> micros = press(events, micros + 30_000 + random.nextInt(5_000), key(5), 30_000);
                    case DROPOUTS -> micros = press(events, micros + 60_000, key(5), 200_000);
                    default -> micros = shorts(events, micros + 200_000);
                }
                made += events.size() - from;
                if (events.size() > AT_ONCE || made >= EVENTS) {
                    journal.append(events);
                    events.clear();
                }
            }
            journal.append(new Event.ByPerson(micros / 1_000, new Action.Ended()));
        }
    }

    private Key key(int index) {
        return plan.keys().get(index);
    }

    private static long press(List<Event> events, long micros, Key key, long held) {
        Pair pair = new Pair(key.row(), key.column());
        events.add(new Event.FromProbe(micros / 1_000, new ProbeEvent.Closed(micros, pair)));
        events.add(new Event.FromProbe((micros + held) / 1_000, new ProbeEvent.Opened(micros + held, pair)));
        return micros + held;
    }

    private long shorts(List<Event> events, long micros) {
        List<Pair> row = plan.keys().stream()
                .filter(key -> key.row() == 0)
                .map(key -> new Pair(key.row(), key.column()))
                .toList();
        row.forEach(pair -> events.add(new Event.FromProbe(micros / 1_000, new ProbeEvent.Closed(micros, pair))));
        long up = micros + 200_000;
        row.forEach(pair -> events.add(new Event.FromProbe(up / 1_000, new ProbeEvent.Opened(up, pair))));
        return up;
    }
}
