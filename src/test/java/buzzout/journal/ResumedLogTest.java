package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Action;
import buzzout.session.Event;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResumedLogTest {
    private static final Plan PLAN = ExamplePlan.quayside();
    private static final Event NOTE = new Event.ByPerson(9_000, new Action.Noted("taken up again"));

    @TempDir
    Path folder;

    @Test
    void cut_at_any_byte_of_its_last_line_a_log_goes_on_with_every_whole_line_and_no_damage() throws IOException {
        byte[] whole = Files.readAllBytes(written());
        int lastLine = new String(whole, 0, whole.length - 1, StandardCharsets.ISO_8859_1).lastIndexOf('\n') + 1;
        for (int cut = lastLine; cut <= whole.length; cut++) {
            Path path = Files.write(folder.resolve("cut-" + cut + ".jsonl"), Arrays.copyOf(whole, cut));
            boolean lineIsThere = cut >= whole.length - 1;
            Optional<String> torn = goneOn(path);
            assertEquals(
                    lineIsThere || cut == lastLine
                            ? Optional.empty()
                            : Optional.of(new String(whole, lastLine, cut - lastLine, StandardCharsets.UTF_8)),
                    torn);
            LogFile file = JournalReader.read(path);
            assertEquals(List.of(), file.problems(), "cut at " + cut);
            List<Event> events = file.log().orElseThrow().events();
            assertEquals(EveryEvent.list().subList(0, events.size() - 1), events.subList(0, events.size() - 1));
            assertEquals(EveryEvent.list().size() + (lineIsThere ? 1 : 0), events.size());
            assertEquals(NOTE, events.get(events.size() - 1));
        }
    }

    @Test
    void a_line_altered_in_the_middle_is_named_and_the_log_goes_on_around_it() throws IOException {
        Path path = written();
        List<String> lines = Files.readAllLines(path);
        lines.set(3, lines.get(3).replace("closed", "cloqed"));
        Files.write(path, lines);
        try (ResumedLog resumed = ResumedLog.open(path)) {
            assertEquals(4, resumed.file().problems().get(0).line());
        }
        goneOn(path);
        assertEquals(
                EveryEvent.list().size(),
                JournalReader.read(path).log().orElseThrow().events().size());
        assertEquals(lines, Files.readAllLines(path).subList(0, lines.size()));
    }

    @Test
    void only_looked_into_a_log_stays_as_it_is() throws IOException {
        Path path = written();
        Files.writeString(path, "{\"event\":\"clo", StandardOpenOption.APPEND);
        byte[] before = Files.readAllBytes(path);
        try (ResumedLog resumed = ResumedLog.open(path)) {
            assertEquals(1, resumed.file().problems().size());
        }
        assertTrue(Arrays.equals(before, Files.readAllBytes(path)));
    }

    @Test
    void of_two_programs_on_one_log_the_second_says_so_and_writes_nothing() throws IOException {
        Path path;
        try (Journal first = Journal.createIn(folder, EveryEvent.HEADER, PLAN)) {
            path = first.path();
            String sentence = assertThrows(LogNotWritten.class, () -> ResumedLog.open(path))
                    .sentence();
            assertEquals(
                    "cannot write the session log " + path
                            + ": another program is writing it. End that one first, or begin a new log.",
                    sentence);
            assertEquals(List.of(), JournalReader.read(path).problems(), "it can be read meanwhile");
        }
        assertEquals(Optional.empty(), goneOn(path));
    }

    @Test
    void a_log_that_may_not_be_written_is_told_and_left_alone() throws IOException {
        Path path = written();
        assumeFalse(!path.toFile().setReadOnly() || Files.isWritable(path), "root may write everywhere");
        assertTrue(assertThrows(LogNotWritten.class, () -> ResumedLog.open(path))
                .sentence()
                .contains("you are not allowed to write there"));
    }

    @Test
    void what_is_no_file_is_refused() {
        assertThrows(LogNotWritten.class, () -> ResumedLog.open(folder));
        assertThrows(LogNotWritten.class, () -> ResumedLog.open(folder.resolve("none.jsonl")));
        assertThrows(LogNotWritten.class, () -> ResumedLog.open(Path.of("/dev/null")));
    }

    private static Optional<String> goneOn(Path path) throws IOException {
        try (ResumedLog resumed = ResumedLog.open(path)) {
            ResumedLog.Continued on = resumed.goOn(PLAN);
            on.journal().append(NOTE);
            return on.tornLine();
        }
    }

    private Path written() throws IOException {
        try (Journal journal = Journal.createIn(folder, EveryEvent.HEADER, PLAN)) {
            journal.append(EveryEvent.list());
            return journal.path();
        }
    }
}
