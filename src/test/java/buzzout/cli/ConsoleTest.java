package buzzout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ConsoleTest {
    private final StringWriter out = new StringWriter();
    private final Console console = new Console(new PrintWriter(out), new PrintWriter(new StringWriter()));

    @Test
    void lines_of_either_kind_end_as_lines_do_here() {
        console.say("Q,good\r\nW,good\r\n");
        console.say("one\n\ntwo");
        assertEquals("Q,good\nW,good\none\n\ntwo\n", out.toString().replace(System.lineSeparator(), "\n"));
    }

    @Test
    void what_would_move_the_cursor_is_shown_and_not_obeyed() {
        console.say("no\rfile\u001b[2J");
        assertEquals("no\\x0Dfile\\x1B[2J", out.toString().strip());
    }
}
