package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.journal.JournalReader;
import buzzout.session.AllAtOnce;
import buzzout.session.Bounces;
import buzzout.session.FlexCheck;
import buzzout.session.KeyState;
import buzzout.session.Session;
import java.io.IOException;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Keys held on the executed sketch: flex check, all at once; and how long contacts bounce. */
@Timeout(300) // against hanging only
class HoldingIT extends OnTheSketch {
    @BeforeAll
    static void needATerminal() throws IOException, InterruptedException {
        Needs.tmux();
    }

    @Test
    void a_link_that_opens_while_the_plate_is_flexed_is_blamed() throws Exception {
        try (Tmux tmux = Tmux.running(folder, 80, 24, board.run("--log", "log.jsonl", "--quiet"))) {
            tmux.await("Press every key");
            tmux.type("f");
            tmux.await("Nothing is held yet");
            board.hold("W", "E", "R", "D");
            tmux.await("Held: W, E, R and D.");
            board.flex(30, "open:R1:W:E");
            tmux.await("E and R dropped out together once");
            board.flex(50, "open:R1:W:E");
            tmux.await("E and R dropped out together twice");
            tmux.await("W and D stayed: look at the link of R1 between W and E.");
            board.letGo("W", "E", "R", "D");
            tmux.await("Nothing is held yet");
            tmux.type("f");
            tmux.await("flex check over");
            tmux.await("~ 2 intermittent");
            tmux.type("q");
            tmux.awaitEnd(1);
        }
        Session session = replayed();
        FlexCheck.Pattern pattern = session.flex().patterns().get(0);
        assertEquals(1, session.flex().patterns().size());
        assertEquals(keys("E", "R"), pattern.dropped());
        assertEquals(keys("W", "D"), pattern.stayed());
        assertEquals(2, pattern.times());
        assertTrue(pattern.longestMicros() >= 50_000 && pattern.longestMicros() < 500_000, pattern::toString);
        assertEquals(0, session.presses().size(), "what is held is no press");
    }

    @Test
    void what_appears_only_in_company_is_seen_and_a_sound_board_is_as_computed() throws Exception {
        try (Tmux tmux = Tmux.running(folder, 80, 24, board.run("--log", "log.jsonl", "--quiet"))) {
            tmux.await("Press every key");
            tmux.type("a");
            tmux.await("together for a moment, then let go. 1 of 12.");
            board.hold("Esc", "Q", "Tab", "A");
            tmux.await("All of them are down: let go.");
            board.letGo("Esc", "Q", "Tab", "A");
            tmux.await("Esc, Q, Tab and A together: as computed");
            tmux.await("2 of 12.");
            board.solder("bypassed:W");
            for (int time = 0; time < 2; time++) {
                board.hold("W", "E", "S", "D");
                board.letGo("W", "E", "S", "D");
                tmux.await(time == 0 ? "Hold them once more" : "3 of 12.");
            }
            tmux.type("a");
            tmux.await("all at once over");
            tmux.type("q");
            tmux.awaitEnd(1);
        }
        Session session = replayed();
        AllAtOnce.Tried last = session.allAtOnce().tried().get(1);
        assertEquals(keys("W", "E", "S", "D"), last.keys());
        assertTrue(last.answer().count() > 4, last::toString);
    }

    @Test
    void a_key_that_bounces_too_long_is_marked_and_held_words_work_without_a_terminal() throws Exception {
        try (Spoken spoken = Spoken.running(folder, board.run("--log", "log.jsonl"))) {
            spoken.await("quiet check done");
            board.tap("W");
            board.bench.bounce(board.plan.key("Q").orElseThrow(), 4, 4_000);
            board.hold("Q");
            board.letGo("Q");
            spoken.await("Q pressed: R1→C2, as planned");
            spoken.type("bounce");
            spoken.await("over in 1");
            spoken.type("mute");
            spoken.await("Muted.");
            spoken.type("together");
            spoken.await("Hold Esc, Q, Tab and A together for a moment, then let go. 1 of 12.");
            spoken.type("flex");
            spoken.await("Hold one or more keys down firmly and flex the plate");
            board.hold("Q");
            board.flex(20, "dead:Q");
            spoken.await("Q dropped out for ");
            board.letGo("Q");
            spoken.type("flex");
            spoken.await("the switch, the diode and the joints of Q");
            spoken.type("quit");
            assertEquals(1, spoken.status());
        }
        Session session = replayed();
        Bounces.OfKey worst = session.bounces().overLimit().get(0);
        assertEquals(keys("Q"), Set.of(worst.key()));
        assertTrue(worst.longest() >= 23_000, worst::toString);
        assertEquals(1, session.count(KeyState.GOOD));
        assertEquals(1, session.count(KeyState.INTERMITTENT));
    }

    private Session replayed() {
        return JournalReader.read(folder.resolve("log.jsonl"))
                .log()
                .orElseThrow()
                .replayed();
    }

    private Set<Integer> keys(String... names) {
        return Stream.of(names)
                .map(name -> board.plan.key(name).orElseThrow().index())
                .collect(Collectors.toSet());
    }
}
