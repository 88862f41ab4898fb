package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    /** The first two are published check values (Rosetta Code, found); the rest are counted by hand. */
    @ParameterizedTest
    @CsvSource({
        "kitten, sitting, 3",
        "rosettacode, raisethysword, 8",
        "'', abc, 3",
        "abc, '', 3",
        "Space, Spcae, 1",
        "ab, ba, 1",
        "same, same, 0"
    })
    void changes_are_counted_letter_by_letter(String from, String to, int changes) {
        assertEquals(changes, Nearest.changes(from, to));
    }

    @Test
    void the_nearest_of_several_names_is_found() {
        assertEquals(Optional.of("columns"), Nearest.to("Colums", List.of("rows", "columns", "controller")));
    }

    @Test
    void a_name_that_is_like_none_of_them_has_no_nearest() {
        assertEquals(Optional.empty(), Nearest.to("Q", List.of("W", "E")));
        assertEquals(Optional.empty(), Nearest.to("zebra", List.of("rows", "columns")));
        assertEquals(Optional.empty(), Nearest.to("r".repeat(10_000), List.of("rows")));
    }
}
