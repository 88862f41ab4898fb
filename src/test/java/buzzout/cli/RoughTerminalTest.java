package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.journal.JournalReader;
import buzzout.session.Action;
import buzzout.session.Event;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Signals, terminals that go away, and sizes that no board fits: the session ends as it should, or goes on. */
@Timeout(300) // against hanging only
class RoughTerminalTest {
    private static final String DRAWN = "wait:of 46 good";

    @TempDir
    Path folder;

    @BeforeAll
    static void needsATerminal() {
        TerminalScript.needsPython();
    }

    @Test
    void a_signal_after_q_does_not_wait_for_the_findings_and_says_where_they_are() throws Exception {
        TerminalScript.Outcome outcome = demo(DRAWN, "type:q", "wait:\u001b[?1049l", "kill:15");
        assertEquals("[]", outcome.changed(), outcome::after);
        String log = log().getFileName().toString();
        String wayOut = "Signal TERM ended the session; its log is complete. `buzzout diagnose sessions/" + log
                + "` prints the findings.\n";
        boolean cutShort = outcome.status() == 128 + 15 && outcome.after().equals(wayOut);
        boolean findingsCameFirst =
                outcome.after().contains("of 46 keys good") && !outcome.after().contains(wayOut);
        assertTrue(cutShort || findingsCameFirst, outcome::toString);
        ended("TERM after q");
    }

    @Test
    void a_terminal_that_goes_away_ends_the_session_as_a_hangup_does_and_its_log_is_complete() throws Exception {
        assertEquals(128 + 1, demo(DRAWN, "close").status());
        ended("terminal closed");
    }

    @Test
    void a_storm_of_sizes_leaves_a_screen_that_draws_and_a_terminal_as_it_was() throws Exception {
        TerminalScript.Outcome outcome = demo(
                DRAWN,
                "storm:40",
                "size:5x20",
                "wait:larger",
                "size:100x400",
                "wait:untested",
                "size:24x80",
                DRAWN,
                "kill:1");
        assertEquals("[]", outcome.changed(), outcome::after);
        assertEquals(128 + 1, outcome.status());
        assertTrue(outcome.after().endsWith("Signal HUP ended the session; its log is complete.\n"), outcome::after);
        ended("40 sizes at random, 20x5, 400x100, HUP");
    }

    private TerminalScript.Outcome demo(String... steps) throws IOException, InterruptedException {
        return TerminalScript.play(folder, List.of(steps), Main.class.getName(), "demo", "--quiet");
    }

    private void ended(String what) throws IOException {
        List<Event> events = JournalReader.read(log()).log().orElseThrow().events();
        assertEquals(
                1,
                events.stream()
                        .filter(event -> event instanceof Event.ByPerson by && by.action() instanceof Action.Ended)
                        .count());
        System.out.println("figure: " + what + " | terminal restored, log ends with `ended` | the same");
    }

    private Path log() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("sessions"))) {
            return files.findFirst().orElseThrow();
        }
    }
}
