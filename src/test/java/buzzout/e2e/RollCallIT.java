package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.journal.JournalReader;
import buzzout.journal.SessionLog;
import buzzout.session.Action;
import buzzout.session.Event;
import java.io.IOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Somebody presses what is called, slips once, repairs what is found, and presses again what is called. */
@Timeout(300) // against hanging only
class RollCallIT extends OnTheSketch {
    private static final Pattern CALL = Pattern.compile("[Pp]ress (\\S+)(?: now)? \\((\\d+) of (\\d+)\\)");

    @BeforeAll
    static void needATerminal() throws IOException, InterruptedException {
        Needs.tmux();
    }

    @Test
    void swapped_leads_and_a_misplaced_key_are_found_and_retested() throws Exception {
        board.solder("swapped:C8:C9", "wrong-net:V:C4");
        try (Tmux tmux = Tmux.running(folder, 80, 24, board.run("--log", "log.jsonl", "--roll-call"))) {
            slip(tmux, 1);
            answer(tmux, 1, 46);
            tmux.await("0 untested");
            tmux.await("the leads of C8 and C9 are swapped");
            tmux.await("V is wired to C4 instead of C5");

            repair(tmux, "C8 and C9", "wrong-net:V:C4");
            answer(tmux, 1, 7);
            tmux.await("Retest: that is repaired; something else is still wrong");

            repair(tmux, "V is wired");
            answer(tmux, 1, 1);
            tmux.await("Retest: the board is whole again, every key is good.");
            tmux.await("46 of 46 good");
            tmux.type("q");
            tmux.awaitEnd(0);
        }
        SessionLog log = JournalReader.read(folder.resolve("log.jsonl")).log().orElseThrow();
        assertEquals(46 + 7 + 1 + 1, count(log, Action.Called.class), "the key after the slip was called twice");
        assertEquals(1, count(log, Action.TakenBack.class));
        assertEquals(2, count(log, Action.Repaired.class));
        assertEquals(0, Jar.run(folder, "replay", "log.jsonl", "--quiet").status());
    }

    @Test
    void a_roll_call_and_a_retest_go_without_a_terminal() throws Exception {
        board.solder("dead:Up");
        try (Spoken spoken = Spoken.running(folder, board.run("--log", "log.jsonl", "--roll-call"))) {
            spoken.await("press Up now");
            spoken.type("n");
            spoken.await("Up pressed: nothing came");
            spoken.await("likely: Up never conducts");
            spoken.type("findings");
            spoken.await("(dead:Up)");
            spoken.type("repaired dead:Up");
            spoken.await("Unplug, repair, plug in again");
            board.bench.unplug();
            board.solder();
            spoken.await("link lost");
            board.bench.replug();
            spoken.await("quiet check done", 2);
            spoken.await("press Up now", 2);
            board.tap("Up");
            spoken.await("Retest: that is repaired; 45 keys are still untested.");
            spoken.type("quit");
            assertEquals(0, spoken.status(), spoken.all());
        }
    }

    /** Presses the neighbour of what is called, sees it, takes it back, and is called again. */
    private void slip(Tmux tmux, int number) throws IOException, InterruptedException {
        String called = called(tmux, number);
        board.tap(called.equals("Q") ? "W" : "Q");
        tmux.await(called + " was called, Q answered. A slip? u.");
        tmux.type("u");
        tmux.await("Press " + called + " now (" + number + " of 46).");
    }

    private void answer(Tmux tmux, int first, int last) throws IOException, InterruptedException {
        for (int number = first; number <= last; number++) {
            board.tap(called(tmux, number));
        }
    }

    /** The key of this call. */
    private static String called(Tmux tmux, int number) throws IOException, InterruptedException {
        tmux.await("call " + number, text -> {
            Matcher call = CALL.matcher(text);
            return call.find() && Integer.parseInt(call.group(2)) == number;
        });
        Matcher call = CALL.matcher(tmux.text());
        assertTrue(call.find(), tmux.screen());
        String spoken = call.group(1);
        return spoken.startsWith("\"") ? spoken.substring(1, spoken.length() - 1) : spoken;
    }

    /** Chooses the first finding, which must say this, and solders with the cable out. */
    private void repair(Tmux tmux, String says, String... left) throws IOException, InterruptedException {
        tmux.type("Tab");
        tmux.await("the repair", text -> text.contains("Repair: unplug first."));
        assertTrue(tmux.text().contains(says), tmux.screen());
        tmux.type("d");
        tmux.await("Unplug, repair, plug in again");
        board.bench.unplug();
        tmux.await("Unplugged.");
        board.solder(left);
        board.bench.replug();
    }

    private static long count(SessionLog log, Class<? extends Action> kind) {
        List<Event> events = log.events();
        return events.stream()
                .filter(event -> event instanceof Event.ByPerson by && kind.isInstance(by.action()))
                .count();
    }
}
