package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.cli.CommandLineCase.Result;
import buzzout.journal.Journal;
import buzzout.journal.JournalReader;
import buzzout.journal.LogFile;
import buzzout.plan.Key;
import buzzout.probe.Identity;
import buzzout.probe.LiveProbe;
import buzzout.probe.ProbeEvent;
import buzzout.probe.SettleTime;
import buzzout.probe.SimulatedBoard;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.KeyState;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60) // against hanging only
class ResumeTest {
    private static final LoadedPlan PLAN = LoadedPlan.quayside();

    @TempDir
    Path folder;

    private CommandLineCase line;

    @BeforeEach
    void open() throws IOException {
        line = CommandLineCase.in(folder);
    }

    @Test
    void a_session_that_broke_off_in_a_press_and_in_a_line_goes_on_in_the_same_log() throws Exception {
        Path log = folder.resolve("q.jsonl");
        Journal broken = SessionLogs.begin(surroundings(), PLAN, Optional.of("Q-03"), Optional.of("q.jsonl"));
        held(new Bench(PLAN, broken), Past.NONE, "Q", true);
        broken.close();
        Files.writeString(log, "{\"event\":\"opened\",\"ms\":19", StandardOpenOption.APPEND);

        Session session;
        try (Resumption resumption = Resumption.of(surroundings(), "q.jsonl", Optional.of(PLAN))) {
            assertEquals(Optional.of("Q-03"), resumption.unit());
            session = held(
                    new Bench(resumption.loaded(), resumption.journal(), resumption.past(), List.of()),
                    resumption.past(),
                    "W",
                    false);
        }
        assertEquals(2, session.count(KeyState.GOOD), "what was pressed before counts");
        assertEquals(Stage.ENDED, session.stage());
        LogFile file = JournalReader.read(log);
        assertEquals(List.of(), file.problems(), "no damage, and neither clock goes back");
        assertEquals(session, file.log().orElseThrow().replayed());
        assertTrue(Files.readString(log).contains("the last line was torn and was cut off: {\\\"event\\\":\\\"opened"));
        assertEquals(0, line.run("replay", "q.jsonl", "--quiet").err().length());
    }

    @Test
    void a_session_that_was_ended_in_a_repair_goes_on_with_the_retest() throws IOException {
        line.run("simulate", "quayside.toml", "--fault", "dead:Q", "--log", "q.jsonl");
        Session ended = JournalReader.read(folder.resolve("q.jsonl"))
                .log()
                .orElseThrow()
                .replayed()
                .after(new Event.ByPerson(90_000, new Action.QuietCheckDone()))
                .after(new Event.ByPerson(90_001, new Action.Repaired("dead:Q")))
                .after(new Event.ByPerson(90_002, new Action.Ended()));
        Session on = ended.after(new Event.FromProbe(
                90_003, new ProbeEvent.Found(new Identity(1, "1", "ATmega32U4", 26, 1), "/dev/ttyACM0")));
        assertEquals(Stage.QUIET_CHECK, on.stage());
        assertEquals(KeyState.UNTESTED, on.states().get(key("Q").index()));
        assertEquals(45, on.count(KeyState.GOOD));
    }

    @Test
    void another_plan_another_s_log_and_options_that_make_no_sense_are_refused() throws IOException {
        line.run("simulate", "quayside.toml", "--log", "q.jsonl");
        byte[] before = Files.readAllBytes(folder.resolve("q.jsonl"));
        Files.writeString(folder.resolve("other.toml"), line.run("new", "4x12").out());
        refused(
                "q.jsonl: this session was held with another plan than other.toml; leave the plan out to go on with the"
                        + " log's own, or begin a new session.",
                "other.toml",
                "--resume",
                "q.jsonl");
        refused(
                "--resume goes on in a log that has its name and its unit already: leave out --log and --unit. `buzzout run"
                        + " --help` shows what it takes.",
                "--resume",
                "q.jsonl",
                "--unit",
                "Q-04");
        refused(
                "quayside.toml:1: the line is not one JSON object; nothing else can be read without the plan in this"
                        + " line\nquayside.toml: there is nothing here to go on with.",
                "--resume",
                "quayside.toml");
        refused("PLAN is missing. `buzzout run --help` shows what it takes.");
        assertEquals(new String(before, StandardCharsets.UTF_8), Files.readString(folder.resolve("q.jsonl")));
    }

    private void refused(String sentence, String... arguments) {
        String[] words = new String[arguments.length + 1];
        words[0] = "run";
        System.arraycopy(arguments, 0, words, 1, arguments.length);
        Result result = line.run(words);
        assertEquals(sentence + "\n", result.err());
        assertEquals(2, result.status());
    }

    /** One key pressed on a sound board, after the quiet check; then the program is gone, or ends as it should. */
    private static Session held(Bench bench, Past past, String key, boolean gone) throws Exception {
        LiveBench live = LiveBench.start(bench, past, BoardHands.NONE);
        SimulatedBoard board = SimulatedBoard.inRealTime(PLAN.plan(), List.of(), 1);
        long good = live.now().session().count(KeyState.GOOD);
        LiveProbe probe = LiveProbe.start(PLAN.plan(), board, SettleTime.USUAL, live::hear, live::fail);
        try {
            await(live, session -> session.stage() == Stage.PRESSING);
            board.press(key(key));
            await(live, session -> session.count(KeyState.GOOD) == good + 1);
            if (!gone) {
                board.release(key(key));
                await(live, session -> !session.isKeyDown());
            }
        } finally {
            probe.close();
        }
        return gone ? live.now().session() : live.end().session();
    }

    private static void await(LiveBench live, Predicate<Session> reached) throws InterruptedException {
        while (!reached.test(live.now().session())) {
            Thread.sleep(10);
        }
    }

    private static Key key(String name) {
        return PLAN.plan().key(name).orElseThrow();
    }

    private Surroundings surroundings() {
        Console console = new Console(new PrintWriter(new StringWriter()), new PrintWriter(new StringWriter()));
        return new Surroundings(console, InputStream.nullInputStream(), folder, OffsetDateTime::now, Map.of(), false);
    }
}
