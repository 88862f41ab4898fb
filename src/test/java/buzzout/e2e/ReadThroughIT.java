package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.journal.JournalReader;
import buzzout.journal.LogFile;
import buzzout.session.KeyState;
import buzzout.session.Session;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A person reads the board through, eyes on it: the built jar and the compiled sketch on a wired board. */
@Timeout(300) // against hanging only
class ReadThroughIT extends OnTheSketch {
    /** G is left out by a slip; R3 is open between M and comma, so that four keys are silent. */
    @Test
    void on_the_screen_a_key_left_out_is_asked_for_again_and_the_fault_stays() throws Exception {
        Needs.tmux();
        board.solder("open:R3:M:,");
        try (Tmux tmux = Tmux.running(folder, 100, 30, board.run("--log", "log.jsonl"))) {
            tmux.await("Press every key");
            tmux.type("r");
            tmux.await("Read through");
            board.tapAllBut("G");
            tmux.await("Right pressed");
            tmux.type("r");
            tmux.await("presses lined up with the keys");
            tmux.await("R3 is open between M and \",\"");
            tmux.await("Press G once more");
            board.tap("G");
            tmux.await("42 of 46 good");
            tmux.type("q");
            tmux.awaitEnd(1);
        }
        Session session = replayed();
        assertEquals(4, session.count(KeyState.SILENT));
        assertEquals(0, session.count(KeyState.UNTESTED));
    }

    /** S is pressed twice, and the leads of R1 and R2 sit on each other's pins. */
    @Test
    void without_a_terminal_rows_that_answer_elsewhere_are_lined_up_and_named() throws Exception {
        board.solder("swapped:R1:R2");
        try (Spoken spoken = Spoken.running(folder, board.run("--log", "log.jsonl", "--read-through"))) {
            spoken.await("read-through begun");
            for (var key : board.plan.keys()) {
                board.tap(key.name());
                if (key.name().equals("S")) {
                    board.tap(key.name());
                }
            }
            spoken.await("Right pressed");
            spoken.type("done");
            spoken.await("likely: the leads of R1 and R2 are swapped at the controller");
            spoken.type("quit");
            assertEquals(1, spoken.status());
        }
        assertEquals(24, replayed().count(KeyState.MISPLACED));
        assertEquals(22, replayed().count(KeyState.GOOD));
        Jar.Result diagnosis = Jar.run(folder, "diagnose", "log.jsonl", "--json");
        assertTrue(diagnosis.out().contains("\"swapped:R1:R2\""), diagnosis.out());
    }

    private Session replayed() {
        LogFile file = JournalReader.read(folder.resolve("log.jsonl"));
        assertEquals(java.util.List.of(), file.problems());
        return file.log().orElseThrow().replayed();
    }
}
