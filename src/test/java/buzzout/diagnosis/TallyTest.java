package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TallyTest {
    private final Tally tally = new Tally();

    @Test
    void answers_keep_the_order_in_which_each_first_came_and_are_counted() {
        tally.add(7, 1);
        tally.add(3, 2);
        tally.add(7, 4);
        tally.add(11, 1);
        assertEquals(List.of(7, 3, 11), tally.answers());
        assertEquals(3, tally.count());
        assertEquals(5, tally.times(0));
        assertEquals(2, tally.timesOf(3));
        assertEquals(11, tally.answer(2));
    }

    @Test
    void a_hundred_different_answers_have_room() {
        for (int answer = 0; answer < 100; answer++) {
            tally.add(100 - answer, answer + 1);
        }
        for (int place = 0; place < 100; place++) {
            assertEquals(100 - place, tally.answer(place));
            assertEquals(place + 1, tally.times(place));
        }
    }

    @Test
    void what_never_came_came_no_times() {
        assertTrue(tally.isEmpty());
        assertEquals(0, tally.timesOf(5));
        tally.add(0, 1);
        assertFalse(tally.isEmpty());
        assertEquals(0, tally.timesOf(5));
    }
}
