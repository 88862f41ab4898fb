package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CorrectedTextTest {
    private static final String TEXT = """
            # Mine; "ä" and D0 in a comment stay.
            name = "Small"   # odd   spacing
            controller = 'ATmega32U4'
            stripe = 'row'
            [columns]
            C1 = { keys = "A C", pin = 'D4', colour = "red" }  # D4
            C2 = { pin = "D6", keys = "B D" }
            [rows]
            "Rä" = { pin = "D0", keys = "A B" }
            R2 = { pin = "D1", keys = "C D" }
            """;

    @Test
    void pins_and_stripe_change_and_nothing_else() {
        assertEquals(
                Optional.of(TEXT.replace("pin = 'D4'", "pin = 'D0'")
                        .replace("{ pin = \"D0\"", "{ pin = \"D4\"")
                        .replace("stripe = 'row'", "stripe = 'column'")),
                CorrectedText.of(TEXT, Map.of("Rä", "D4", "C1", "D0"), NetKind.COLUMN));
    }

    @Test
    void a_stripe_that_was_not_said_is_put_at_the_top() {
        String without = TEXT.replace("stripe = 'row'\n", "");
        assertEquals(
                Optional.of("stripe = \"column\"\n" + without), CorrectedText.of(without, Map.of(), NetKind.COLUMN));
        assertEquals(Optional.of(without), CorrectedText.of(without, Map.of(), NetKind.ROW));
    }

    @Test
    void windows_line_ends_are_kept() {
        String text = TEXT.replace("\n", "\r\n");
        assertEquals(
                Optional.of(text.replace("\"D6\"", "\"B1\"")), CorrectedText.of(text, Map.of("C2", "B1"), NetKind.ROW));
    }

    @Test
    void a_pin_written_in_another_way_is_left_alone() {
        assertEquals(
                Optional.empty(),
                CorrectedText.of(TEXT.replace("\"D6\"", "\"D\\u0036\""), Map.of("C2", "B1"), NetKind.ROW));
        assertEquals(
                Optional.empty(),
                CorrectedText.of(TEXT.replace("\"D6\"", "\"\"\"D6\"\"\""), Map.of("C2", "B1"), NetKind.ROW));
    }
}
