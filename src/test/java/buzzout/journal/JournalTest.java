package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @TempDir
    Path folder;

    @Test
    void every_event_and_the_header_come_back_as_they_were_written() throws IOException {
        Path path = written();
        LogFile file = JournalReader.read(path);
        assertEquals(List.of(), file.problems());
        assertEquals(
                new SessionLog(EveryEvent.HEADER, PLAN, EveryEvent.list()),
                file.log().orElseThrow());
    }

    @Test
    void the_sample_leaves_out_no_kind_of_event() {
        assertEquals(kinds(ProbeEvent.class), kindsOf(EveryEvent.probeEvents()));
        assertEquals(kinds(Action.class), kindsOf(EveryEvent.actions()));
    }

    @Test
    void an_event_is_in_the_file_before_the_journal_is_closed() throws IOException {
        try (Journal journal = Journal.createIn(folder, EveryEvent.HEADER, PLAN)) {
            int lines = 1;
            for (var event : EveryEvent.list()) {
                journal.append(event);
                assertEquals(++lines, Files.readAllLines(journal.path()).size());
            }
        }
    }

    @Test
    void the_name_tells_board_unit_and_time_and_is_never_taken_twice() throws IOException {
        Path first = written();
        Path second = written();
        assertEquals(
                "quayside-46-Q-03-2026-11-25T10-14-05.jsonl",
                first.getFileName().toString());
        assertEquals(
                "quayside-46-Q-03-2026-11-25T10-14-05-2.jsonl",
                second.getFileName().toString());
    }

    @Test
    void a_mark_cannot_lead_out_of_the_folder() throws IOException {
        LogHeader header = new LogHeader(
                EveryEvent.HEADER.program(),
                EveryEvent.HEADER.started(),
                java.util.Optional.of("../../Q/03"),
                EveryEvent.HEADER.planFile(),
                EveryEvent.HEADER.planText());
        try (Journal journal = Journal.createIn(folder, header, PLAN)) {
            assertEquals(folder, journal.path().getParent());
            assertEquals(
                    "quayside-46-Q-03-2026-11-25T10-14-05.jsonl",
                    journal.path().getFileName().toString());
        }
    }

    @Test
    void nor_can_a_board_s_name() throws IOException {
        String text = ExamplePlan.quaysideText().replace("Quayside 46", "../../x");
        Plan up = PlanReader.read(text, "up.toml").plan().orElseThrow();
        try (Journal journal = Journal.createIn(folder, EveryEvent.HEADER, up)) {
            assertEquals(
                    folder.resolve("x-Q-03-2026-11-25T10-14-05.jsonl").toString(),
                    journal.path().toString());
        }
    }

    @Test
    void an_existing_file_is_refused_and_left_alone() throws IOException {
        Path path = Files.writeString(folder.resolve("mine.jsonl"), "precious");
        LogNotWritten refused = assertThrows(LogNotWritten.class, () -> Journal.create(path, EveryEvent.HEADER, PLAN));
        assertEquals(
                "cannot write the session log " + path + ": there is a file of that name, and nothing is overwritten."
                        + " Choose another name with --log FILE.",
                refused.sentence());
        assertEquals("precious", Files.readString(path));
    }

    @Test
    void a_missing_folder_and_a_file_in_its_place_are_told_apart() throws IOException {
        Path nowhere = folder.resolve("no/such/folder/q.jsonl");
        assertTrue(assertThrows(LogNotWritten.class, () -> Journal.create(nowhere, EveryEvent.HEADER, PLAN))
                .sentence()
                .contains("there is no such folder"));
        Path file = Files.writeString(folder.resolve("sessions"), "");
        assertTrue(assertThrows(LogNotWritten.class, () -> Journal.createIn(file, EveryEvent.HEADER, PLAN))
                .sentence()
                .contains("there is a file of that name"));
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void a_folder_in_which_nobody_may_write_is_named() {
        // Not even root can make a file there, so this holds wherever the tests run.
        Path path = Path.of("/sys/q.jsonl");
        assertEquals(
                "cannot write the session log /sys/q.jsonl: you are not allowed to write there. Choose another place"
                        + " with --log FILE.",
                assertThrows(LogNotWritten.class, () -> Journal.create(path, EveryEvent.HEADER, PLAN))
                        .sentence());
    }

    @Test
    void a_link_in_the_sessions_folder_leads_nowhere() throws IOException {
        Path elsewhere = folder.resolve("elsewhere");
        Path sessions = Files.createDirectory(folder.resolve("sessions"));
        Files.createSymbolicLink(sessions.resolve("quayside-46-Q-03-2026-11-25T10-14-05.jsonl"), elsewhere);
        try (Journal journal = Journal.createIn(sessions, EveryEvent.HEADER, PLAN)) {
            assertEquals(sessions.resolve("quayside-46-Q-03-2026-11-25T10-14-05-2.jsonl"), journal.path());
        }
        assertTrue(Files.notExists(elsewhere), "nothing is written through the link");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void a_full_disk_is_named() throws IOException {
        Path full = Path.of("/dev/full");
        FileChannel channel = FileChannel.open(full, StandardOpenOption.WRITE);
        IOException cause =
                assertThrows(IOException.class, () -> Journal.begin(full, channel, EveryEvent.HEADER, PLAN));
        assertTrue(new LogNotWritten(full, cause).sentence().contains("the disk is full"), cause.toString());
    }

    @Test
    void nothing_in_a_log_moves_a_terminal() throws IOException {
        String text = Files.readString(written());
        assertTrue(text.chars()
                .allMatch(each -> each == '\n' || (each >= ' ' && (each < 0x7f || each > 0x9f) && each != 0x202e)));
    }

    private Path written() throws IOException {
        try (Journal journal = Journal.createIn(folder, EveryEvent.HEADER, PLAN)) {
            journal.append(EveryEvent.list());
            return journal.path();
        }
    }

    private static Set<Class<?>> kinds(Class<?> family) {
        return Stream.of(family.getPermittedSubclasses()).collect(Collectors.toSet());
    }

    private static Set<Class<?>> kindsOf(List<?> sample) {
        return sample.stream().map(Object::getClass).collect(Collectors.toSet());
    }
}
