package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineTest {
    @Test
    void is_the_body_a_star_four_digits_and_a_line_feed() {
        assertArrayEquals("123456789*31C3\n".getBytes(StandardCharsets.US_ASCII), Line.encode("123456789"));
    }

    @Test
    void takes_a_body_of_91_bytes_and_none_longer() {
        assertEquals(97, Line.encode("x".repeat(91)).length);
        assertThrows(IllegalArgumentException.class, () -> Line.encode("x".repeat(92)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " go", "go ", "add  F4", "a*b", "a\tb", "a\nb", "gö", "\u001b[2J"})
    void refuses_what_no_body_may_be(String body) {
        assertThrows(IllegalArgumentException.class, () -> Line.encode(body));
    }
}
