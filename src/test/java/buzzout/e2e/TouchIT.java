package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The flying lead on the executed sketch: a person explores, is asked for touches, and learns which of two it is. */
@Timeout(300) // against hanging only
class TouchIT extends OnTheSketch {
    @BeforeAll
    static void needATerminal() throws IOException, InterruptedException {
        Needs.tmux();
    }

    @Test
    void without_a_screen_the_lead_says_where_it_is_and_an_open_column_is_told_from_a_dead_key() throws Exception {
        board.solder("open:C5:F:V");
        try (Spoken spoken = Spoken.running(folder, board.run("--log", "log.jsonl"))) {
            spoken.await("quiet check done");
            board.bench.touch("C4", "E");
            spoken.await("lead: on C4");
            board.bench.lift();
            board.tapAllBut("V");
            spoken.type("nothing V");
            spoken.await("next: ");
            spoken.type("touch");
            spoken.await("  touch C5 at V, the third joint from the top (solder side)\n");
            board.bench.touch("C5", "V");
            spoken.type("nothing");
            spoken.await("lead at C5, V: on nothing");
            spoken.await("likely: C5 is open between F and V");
            spoken.type("quit");
            assertEquals(1, spoken.status());
            assertTrue(spoken.all().contains("C5 is open between F and V. This is"), spoken.all());
            assertFalse(spoken.all().contains("Next: "), "what is sure needs no next step");
        }
        Jar.Result replayed = Jar.run(folder, "diagnose", "log.jsonl");
        assertTrue(replayed.out().contains("1. C5 is open between F and V. This is"), replayed.out());
    }

    @Test
    void on_the_screen_the_joint_is_shown_from_the_solder_side_and_a_dead_key_is_proven_so() throws Exception {
        board.solder("dead:V");
        try (Tmux tmux = Tmux.running(folder, 80, 24, board.run("--log", "log.jsonl"))) {
            tmux.await("Press every key");
            board.tapAllBut("V");
            tmux.await("45 of 46 good");
            tmux.type("e");
            tmux.await("Next: press V");
            tmux.type("t");
            tmux.await("Touch C5 at V, the third joint from the top (solder side).");
            tmux.await("◎");
            assertTrue(tmux.text().contains("solder side, mirrored"), tmux.screen());
            board.bench.touch("C5", "V");
            tmux.await("The flying lead is on C5.");
            board.bench.lift();
            tmux.await("V never conducts");
            tmux.await("lead at C5, V: on C5");
            tmux.type("q");
            tmux.awaitEnd(1);
        }
    }
}
