package buzzout.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moments are written and read as Java's own ISO 8601 formatter writes and reads them. */
class WrittenTimeTest {
    @Test
    void moments_of_any_zone_are_written_and_read_as_java_does() {
        Random random = new Random(8601);
        for (int i = 0; i < 2000; i++) {
            OffsetDateTime at = Instant.ofEpochSecond(
                            random.nextLong(4_000_000_000L), random.nextInt(3) == 0 ? 5_000 : 0)
                    .atOffset(ZoneOffset.ofTotalSeconds(60 * (random.nextInt(1681) - 840)));
            String written = WrittenTime.of(at);
            assertEquals(DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at), written, "seed 8601");
            assertEquals(at, WrittenTime.read(written), "seed 8601");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-11-25T10:14+01:00", "2026-11-25T10:14:05.25Z", "2026-11-25T10:14:05z"})
    void rarer_forms_are_read_too(String text) {
        assertEquals(OffsetDateTime.parse(text), WrittenTime.read(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "2026-11-25",
                "2026-11-25T10:14:05",
                "2026-02-30T10:14:05Z",
                "2026-11-25T24:14:05Z",
                "2026-11-25T10:14:05+99:00",
                "2026-11-25T10:14:05Zulu",
                "2026-11-25T10:14:05+1",
                "2026-11-25T10:14:05+0100",
                "2026-11-25T10:14:05-0",
                "+026-11-25T10:14:05Z",
                "2026-11-25 10:14:05Z",
                "two-thousand"
            })
    void what_is_no_moment_is_refused(String text) {
        assertThrows(DateTimeException.class, () -> WrittenTime.read(text));
    }
}
