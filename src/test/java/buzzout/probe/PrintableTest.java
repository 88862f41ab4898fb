package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintableTest {
    @ParameterizedTest
    @CsvSource(
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "USB Serial (COM3),USB Serial (COM3)",
                "Prüfgerät 基板,Prüfgerät 基板",
                "\u001b[2J,\\x1B[2J",
                "\u009b31m,\\x9B31m",
                "a\u202eb,a\\u202Eb",
                "a\u2066b,a\\u2066b",
                "a\u200bb,a\\u200Bb",
                "\ud83d\ude00,\ud83d\ude00",
                "\ud83d,\\uD83D",
                "\u2028,\\u2028"
            })
    void turns_what_a_terminal_would_obey_into_codes(String text, String printable) {
        assertEquals(printable, Printable.of(text));
    }

    @Test
    void bytes_from_space_to_tilde_stay_and_what_lies_beside_becomes_a_code() {
        byte[] line = {0x1F, 0x20, 0x7E, 0x7F, (byte) 0x80, (byte) 0xFF};
        assertEquals("\\x1F ~\\x7F\\x80\\xFF", Printable.of(line, line.length));
        assertEquals("\\x1F ", Printable.of(line, 2));
    }

    @Test
    void a_sample_is_cut_where_it_is_longer_than_48_characters() {
        byte[] line = "a".repeat(60).getBytes(StandardCharsets.US_ASCII);
        assertEquals("a".repeat(48), Printable.of(line, 48));
        assertEquals("a".repeat(48) + "...", Printable.of(line, 49));
    }
}
