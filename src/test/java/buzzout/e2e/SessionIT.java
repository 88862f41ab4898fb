package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.journal.JournalReader;
import buzzout.journal.LogFile;
import buzzout.journal.SessionLog;
import buzzout.plan.Key;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A person's session: the built jar in a terminal, through a serial device, with the compiled sketch on a wired board. */
@Timeout(300) // against hanging only
class SessionIT extends OnTheSketch {
    /** A key as it is drawn: its name, shortened where it must be, and its mark. */
    private static final Pattern DRAWN = Pattern.compile("[│║]([^│║\\n]+?) *([·✓○↔‡◄↕▬~])(?=[│║])");

    @BeforeAll
    static void needATerminal() throws IOException, InterruptedException {
        Needs.tmux();
    }

    @Test
    void every_key_but_one_is_pressed_with_an_unplug_in_between() throws Exception {
        try (Tmux tmux = Tmux.running(folder, 80, 24, board.run("--log", "log.jsonl", "--unit", "Q-05"))) {
            tmux.await("0 of 46 good");
            tmux.await("Press every key");
            board.tapAllBut("V", "M", "Log");
            tmux.await("43 of 46 good");

            board.bench.unplug();
            tmux.await("Link down: ");
            board.tap("V"); // nobody sees it
            board.bench.replug();
            tmux.await("the probe again", text -> text.contains("ATmega32U4 on ") && !text.contains("Link down"));
            assertTrue(tmux.text().contains("43 of 46 good"), tmux.screen());
            board.tap("M");
            board.tap("Log");

            tmux.await("45 of 46 good · 1 untested");
            assertEquals(List.of("V"), drawn(tmux.screen(), "·"));
            assertEquals(45, drawn(tmux.screen(), "✓").size(), tmux.screen());
            assertTrue(tmux.text().contains("Nothing wrong so far."), tmux.screen());
            tmux.type("q");
            tmux.awaitEnd(0);
            assertTrue(tmux.history().contains("Nothing wrong found so far: 45 of 46 keys good, 1 untested."));
        }
        SessionLog log = log();
        List<String> pressed =
                new ArrayList<>(board.plan.keys().stream().map(Key::name).toList());
        pressed.removeAll(List.of("V", "M", "Log"));
        pressed.addAll(List.of("M", "Log"));
        assertEquals(pressed, pressed(log));
        assertEquals(
                45,
                log.events().stream()
                        .filter(event -> isFromProbe(event, ProbeEvent.Closed.class))
                        .count());
        assertEquals(
                45,
                log.events().stream()
                        .filter(event -> isFromProbe(event, ProbeEvent.Opened.class))
                        .count());
        assertEquals(
                2,
                log.events().stream()
                        .filter(event -> isFromProbe(event, ProbeEvent.Found.class))
                        .count());
        assertTrue(log.events().stream().anyMatch(event -> isFromProbe(event, ProbeEvent.LinkLost.class)));
        Event last = log.events().get(log.events().size() - 1);
        assertTrue(last instanceof Event.ByPerson by && by.action() instanceof Action.Ended, last::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "open:R3:M:,       | R3 is open between M and \",\"            | 42",
                "bridge:C2:C3:A:S  | C2 and C3 are bridged                   | 46",
                "reversed:O        | the diode of O sits the wrong way round | 46"
            })
    void a_fault_is_named_on_the_screen(String code, String says, int presses) throws Exception {
        board.solder(code);
        try (Tmux tmux = Tmux.running(folder, 80, 24, board.run("--log", "log.jsonl"))) {
            tmux.await("Press every key");
            board.tapAllBut();
            tmux.await("Right pressed");
            tmux.type("e");
            tmux.await("every key has been pressed");
            tmux.await(says);
            tmux.type("q");
            tmux.awaitEnd(1);
        }
        assertEquals(presses, log().replayed().presses().size());
    }

    @Test
    void three_faults_at_once_are_named_and_the_log_says_the_same() throws Exception {
        board.solder("open:R3:M:,", "bridge:C2:C3:A:S", "reversed:O");
        String printed;
        try (Tmux tmux = Tmux.running(folder, 100, 48, board.run("--log", "log.jsonl"))) {
            tmux.await("Press every key");
            board.tapAllBut();
            tmux.await("Right pressed");
            tmux.type("e");
            tmux.await("R3 is open between M and \",\"");
            tmux.await("C2 and C3 are bridged between A and S");
            tmux.await("the diode of O sits the wrong way round");
            for (String says : found("says")) {
                tmux.await(says);
            }
            assertEquals(List.of("O"), drawn(tmux.screen(), "◄"));
            tmux.type("q");
            tmux.awaitEnd(1);
            printed = tmux.history();
        }
        assertEquals(
                List.of("bridge:C2:C3", "open:R3:M:,", "reversed:O"),
                found("code").stream()
                        .map(code -> code.replaceFirst("^(bridge:C2:C3):.*", "$1"))
                        .sorted()
                        .toList());
        Jar.Result replay = Jar.run(folder, "replay", "log.jsonl", "--quiet");
        assertEquals(1, replay.status());
        String findings = Tmux.flat(replay.out().substring(replay.out().indexOf("3 findings")));
        assertTrue(Tmux.flat(printed).contains(findings), () -> printed + "\nis not\n" + replay.out());
    }

    @Test
    void without_a_terminal_presses_and_findings_come_as_plain_lines() throws Exception {
        board.solder("reversed:O");
        try (Spoken spoken = Spoken.running(folder, board.run("--log", "log.jsonl"))) {
            spoken.await("quiet check done");
            board.tap("Q");
            spoken.await("Q pressed: R1→C2, as planned");
            board.tap("O");
            spoken.await("likely: the diode of O sits the wrong way round");
            spoken.await("O pressed: C10→R1, the wrong way round");
            spoken.type("nothing M");
            spoken.await("M pressed: nothing came");
            spoken.type("quit");
            assertEquals(1, spoken.status());
            assertTrue(spoken.all().contains("The diode of O sits the wrong way round."), spoken.all());
            assertFalse(spoken.all().contains("\u001b"), "plain text holds no escapes");
        }
        assertEquals(List.of("Q", "O", "M"), pressed(log()));
    }

    private SessionLog log() {
        LogFile file = JournalReader.read(folder.resolve("log.jsonl"));
        assertEquals(List.of(), file.problems());
        return file.log().orElseThrow();
    }

    private static List<String> pressed(SessionLog log) {
        return log.replayed().presses().stream()
                .map(press -> log.plan().keys().get(press.key().orElseThrow()).name())
                .toList();
    }

    private static boolean isFromProbe(Event event, Class<? extends ProbeEvent> kind) {
        return event instanceof Event.FromProbe from && kind.isInstance(from.event());
    }

    /** A property of each finding's first suspect, from the JSON of the log. */
    private List<String> found(String property) throws IOException, InterruptedException {
        Jar.Result diagnosis = Jar.run(folder, "diagnose", "log.jsonl", "--json");
        assertEquals(1, diagnosis.status(), diagnosis.err());
        JsonArray findings =
                JsonParser.parseString(diagnosis.out()).getAsJsonObject().getAsJsonArray("findings");
        List<String> found = new ArrayList<>();
        for (JsonElement finding : findings) {
            found.add(finding.getAsJsonObject()
                    .getAsJsonArray("suspects")
                    .get(0)
                    .getAsJsonObject()
                    .get(property)
                    .getAsString());
        }
        return found;
    }

    /** The keys that are drawn with a mark. */
    private static List<String> drawn(String screen, String mark) {
        Matcher matcher = DRAWN.matcher(screen);
        List<String> names = new ArrayList<>();
        while (matcher.find()) {
            if (matcher.group(2).equals(mark)) {
                names.add(matcher.group(1).strip());
            }
        }
        return names;
    }
}
