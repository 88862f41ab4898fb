package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogNameTest {
    private static final OffsetDateTime STARTED = OffsetDateTime.parse("2026-11-25T10:04:05+01:00");
    private static final String PIECES = "aZ9\u00e9\u0665\u2167\u4e2d-._/\\ :\u0301\u202e\ud83d\ude80\n";

    private static String named(String board, Optional<String> unit, int number) {
        return LogName.in(Path.of("logs"), board, unit, STARTED, number)
                .getFileName()
                .toString();
    }

    @ParameterizedTest
    @CsvSource({
        "Quayside 46, quayside-46",
        "'  Big  board! ', big-board",
        "../../etc/passwd, etc-passwd",
        "v1.2, v1.2",
        "..., board",
        "'', board",
        "Ünter 9½, ünter-9½"
    })
    void a_name_is_made_of_letters_digits_dots_and_hyphens(String board, String begins) {
        assertEquals(begins + "-2026-11-25T10-04-05.jsonl", named(board, Optional.empty(), 1));
    }

    @Test
    void the_unit_follows_the_board_and_the_number_of_the_try_comes_last() {
        assertEquals("quayside-46-Q-03-2026-11-25T10-04-05-2.jsonl", named("Quayside 46", Optional.of("Q-03"), 2));
    }

    @Test
    void any_board_has_the_name_that_two_regular_expressions_would_give_it() {
        Random random = new Random(46);
        for (int i = 0; i < 3000; i++) {
            StringBuilder board = new StringBuilder();
            for (int left = random.nextInt(60); left > 0; left--) {
                board.append(PIECES.charAt(random.nextInt(PIECES.length())));
            }
            String plain = board.toString().replaceAll("[^\\p{L}\\p{N}.]+", "-").replaceAll("^[-.]+|[-.]+$", "");
            String cut = plain.length() > 40 ? plain.substring(0, 40) : plain;
            assertEquals(
                    (cut.isEmpty() ? "board" : cut).toLowerCase(Locale.ROOT) + "-2026-11-25T10-04-05.jsonl",
                    named(board.toString(), Optional.empty(), 1),
                    () -> "seed 46: " + board);
        }
    }
}
