package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.FailingSession.Failing;
import buzzout.journal.JournalReader;
import buzzout.journal.LogFile;
import buzzout.session.Action;
import buzzout.session.Event;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** When a thread of a session fails, the person is told once, the terminal is as it was, and the log is complete. */
@Timeout(120) // against hanging only
class FailingThreadsTest {
    private static final String MESSAGE = "The program failed \\(StackOverflowError\\). What came before is in [^ ]*"
            + FailingSession.LOG + "; `buzzout run --resume [^ ]*" + FailingSession.LOG
            + "` goes on with it. Please report it together with [^ ]*, which holds the details.\n";

    private static final boolean ALL = "full".equals(System.getProperty("buzzout.campaign"));

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "DRAWING")
    void without_a_screen(Failing failing) throws Exception {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Console console = new Console(new PrintWriter(out), new PrintWriter(err));
        Surroundings surroundings =
                new Surroundings(console, InputStream.nullInputStream(), folder, OffsetDateTime::now, Map.of(), false);
        assertEquals(Status.INTERNAL, FailingSession.hold(surroundings, new Canvas.None(), failing));
        assertTrue(err.toString().matches(MESSAGE), err.toString());
        everythingIsInTheLog();
        System.out.println("figure: error thrown while " + failing + ", plain text | status 70, told once, log complete"
                + " | the same");
    }

    static Stream<Failing> drawn() {
        return ALL
                ? Stream.of(Failing.TAKING, Failing.WEIGHING, Failing.TALKING, Failing.DRAWING)
                : Stream.of(Failing.TAKING, Failing.DRAWING);
    }

    @ParameterizedTest
    @MethodSource("drawn")
    void on_the_screen(Failing failing) throws Exception {
        TerminalScript.needsPython();
        List<String> steps =
                failing == Failing.DRAWING ? List.of("wait:of 46 good", "insist:\r") : List.of("wait:\u001b[?1049h");
        TerminalScript.Outcome outcome =
                TerminalScript.play(folder, steps, FailingSession.class.getName(), failing.name());
        assertEquals("[]", outcome.changed(), outcome::after);
        // What was typed meanwhile is echoed.
        assertTrue(outcome.after().strip().concat("\n").matches(MESSAGE), outcome::after);
        assertEquals(Status.INTERNAL, outcome.status());
        everythingIsInTheLog();
        System.out.println("figure: error thrown while " + failing
                + ", on the screen | terminal restored, status 70, told" + " once, log complete | the same");
    }

    private void everythingIsInTheLog() {
        LogFile file = JournalReader.read(folder.resolve(FailingSession.LOG));
        assertEquals(List.of(), file.problems());
        assertEquals(
                List.of("first", "second", "third"),
                file.log().orElseThrow().events().stream()
                        .filter(event -> event instanceof Event.ByPerson by && by.action() instanceof Action.Noted)
                        .map(event -> ((Action.Noted) ((Event.ByPerson) event).action()).text())
                        .toList());
    }

    @Test
    void an_error_outside_a_session_is_told_in_a_sentence_too() {
        StringWriter err = new StringWriter();
        Console console = new Console(new PrintWriter(new StringWriter()), new PrintWriter(err));
        Surroundings surroundings =
                new Surroundings(console, InputStream.nullInputStream(), folder, OffsetDateTime::now, Map.of(), false);
        assertEquals(Status.INTERNAL, Program.failed(surroundings, new OutOfMemoryError("on purpose")));
        assertTrue(
                err.toString()
                        .matches(
                                "The program failed \\(OutOfMemoryError\\). Please report it together with [^ ]*, which"
                                        + " holds the details.\n"),
                err.toString());
    }
}
