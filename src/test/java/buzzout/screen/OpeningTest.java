package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import org.junit.jupiter.api.Test;

class OpeningTest {
    @Test
    void a_terminal_that_was_not_looked_at_is_not_taken_for_one_that_says_nothing_of_itself() {
        Opening failing = Opening.begin(() -> {
            throw new IllegalStateException("no time zone");
        });
        assertEquals(
                "the terminal could not be looked at",
                assertThrows(IOException.class, failing::asFound).getMessage());
    }
}
