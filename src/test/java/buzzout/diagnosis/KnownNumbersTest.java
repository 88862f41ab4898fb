package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Across;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class KnownNumbersTest {
    private final KnownNumbers known = new KnownNumbers();
    private final List<Across> asked = new ArrayList<>();

    private int number(Across across) {
        return known.number(across, each -> {
            asked.add(each);
            return (int) each.driven() * 100 + (int) each.reading();
        });
    }

    @Test
    void what_was_numbered_is_not_asked_again() {
        Across across = new Across(1, 2, false);
        assertEquals(102, number(across));
        assertEquals(102, number(new Across(1, 2, false)));
        assertEquals(List.of(across), asked);
    }

    @Test
    void nothing_at_all_is_numbered_too() {
        assertEquals(0, number(Across.NOTHING));
        assertEquals(0, number(Across.NOTHING));
        assertEquals(List.of(Across.NOTHING), asked);
    }

    @Test
    void more_than_there_are_slots_keep_their_own_numbers() {
        for (int round = 0; round < 2; round++) {
            for (int driven = 1; driven <= 90; driven++) {
                for (int reading = 1; reading <= 90; reading++) {
                    assertEquals(driven * 100 + reading, number(new Across(driven, reading, false)));
                }
            }
        }
    }
}
