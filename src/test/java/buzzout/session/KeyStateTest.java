package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A state can be told by its mark alone and by its word alone. */
class KeyStateTest {
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void no_two_states_share_a_mark(boolean ascii) {
        assertEquals(
                KeyState.values().length,
                Arrays.stream(KeyState.values())
                        .map(state -> state.mark(ascii))
                        .distinct()
                        .count());
    }

    @Test
    void no_two_states_share_a_word() {
        assertEquals(
                KeyState.values().length,
                Arrays.stream(KeyState.values()).map(KeyState::word).distinct().count());
    }

    @Test
    void marks_in_ascii_are_printable_ascii() {
        for (KeyState state : KeyState.values()) {
            assertTrue(state.mark(true) > ' ' && state.mark(true) < 0x7F, state.word());
        }
    }
}
