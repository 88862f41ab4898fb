package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.journal.Journal;
import buzzout.journal.JournalReader;
import buzzout.journal.LogNotWritten;
import buzzout.journal.SessionLog;
import buzzout.journal.Unsyncable;
import buzzout.probe.Identity;
import buzzout.probe.ProbeEvent;
import buzzout.session.Event;
import buzzout.session.KeyState;
import buzzout.session.Stage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class BenchTest {
    private static final LoadedPlan PLAN = LoadedPlan.quayside();
    private static final Pair ESC = new Pair(0, 4);

    @TempDir
    Path folder;

    @Test
    void the_quiet_check_ends_by_itself_once_nothing_has_changed_for_a_while() throws LogNotWritten {
        try (Journal journal = journal()) {
            Bench bench = begun(journal);
            take(bench, 1_000, new ProbeEvent.Closed(1_000_000, ESC));
            take(bench, 1_200, new ProbeEvent.Opened(1_200_000, ESC));
            bench.passTime(2_699);
            assertEquals(Stage.QUIET_CHECK, bench.now().session().stage());
            bench.passTime(2_700);
            assertEquals(Stage.PRESSING, bench.now().session().stage());
        }
    }

    @Test
    void a_joint_that_never_rests_cannot_hold_the_quiet_check_up_for_ever() throws LogNotWritten {
        try (Journal journal = journal()) {
            Bench bench = begun(journal);
            for (long millis = 1_000; millis < 11_000; millis += 500) {
                take(bench, millis, new ProbeEvent.Closed(millis * 1_000, ESC));
                take(bench, millis + 100, new ProbeEvent.Opened(millis * 1_000 + 100_000, ESC));
                bench.passTime(millis + 100);
                assertEquals(
                        millis + 100 < 10_010 ? Stage.QUIET_CHECK : Stage.PRESSING,
                        bench.now().session().stage());
            }
        }
    }

    @Test
    void what_the_snapshot_shows_is_in_the_log_and_replays_to_the_same() throws LogNotWritten {
        try (Journal journal = journal()) {
            Bench bench = begun(journal);
            bench.passTime(2_000);
            take(bench, 3_000, new ProbeEvent.Closed(3_000_000, ESC));
            bench.weigh();
            SessionLog log = JournalReader.read(journal.path()).log().orElseThrow();
            assertEquals(bench.now().session(), log.replayed());
            assertEquals(1, log.replayed().count(KeyState.GOOD));
        }
    }

    @Test
    void a_log_that_cannot_be_written_is_told_and_the_session_goes_on() throws LogNotWritten {
        Journal journal = journal();
        Bench bench = begun(journal);
        assertEquals(Optional.empty(), bench.now().warning());
        journal.close();
        bench.passTime(2_000);
        assertEquals(Stage.PRESSING, bench.now().session().stage());
        String warning = bench.now().warning().orElseThrow();
        assertTrue(warning.startsWith("cannot write the session log " + folder), warning);
        assertThrows(LogNotWritten.class, bench::finish);
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "its devices cannot be written to like files")
    void a_disk_that_may_have_lost_something_is_told_of_to_the_end() throws IOException {
        Bench bench = begun(Unsyncable.journal());
        assertEquals(Optional.empty(), bench.now().warning());
        bench.sync();
        String warning = bench.now().warning().orElseThrow();
        assertTrue(warning.startsWith("cannot write the session log /dev/null"), warning);
        bench.sync();
        take(bench, 1_000, new ProbeEvent.Closed(1_000_000, ESC));
        assertEquals(Optional.of(warning), bench.now().warning());
        assertThrows(LogNotWritten.class, bench::finish);
    }

    @Test
    void events_of_a_live_bench_are_all_on_the_disk_when_it_ends() throws LogNotWritten, InterruptedException {
        try (Journal journal = journal()) {
            LiveBench live = LiveBench.start(new Bench(PLAN, journal), BoardHands.NONE);
            live.hear(new ProbeEvent.Found(new Identity(1, "1", "chip", 26, 1), "port"));
            for (int at = 0; at < 5_000; at++) {
                live.hear(new ProbeEvent.Lost(1));
            }
            assertEquals(5_000, live.end().session().lostChanges());
            assertEquals(
                    5_002,
                    JournalReader.read(journal.path())
                            .log()
                            .orElseThrow()
                            .events()
                            .size());
        }
    }

    private Journal journal() throws LogNotWritten {
        return Journal.createIn(folder, SessionLogs.header(PLAN, Optional.empty(), Optional.empty()), PLAN.plan());
    }

    private static Bench begun(Journal journal) {
        Bench bench = new Bench(PLAN, journal);
        take(bench, 5, new ProbeEvent.Found(new Identity(1, "1", "chip", 26, 1), "port"));
        take(bench, 10, new ProbeEvent.WholeState(0, Pairs.NONE));
        return bench;
    }

    private static void take(Bench bench, long millis, ProbeEvent event) {
        bench.take(List.of(new Event.FromProbe(millis, event)));
    }
}
