package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TerminalsTest {
    @Test
    void tests_run_without_a_terminal_and_are_told_so() {
        assertEquals(Optional.of("Input or output is no terminal."), BoardScreen.obstacle(Map.of("TERM", "xterm")));
    }
}
