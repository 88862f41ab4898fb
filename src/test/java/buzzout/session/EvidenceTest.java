package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pairs;
import buzzout.session.Observation.Hands;
import java.util.List;
import org.junit.jupiter.api.Test;

class EvidenceTest {
    private static final Observation QUIET = new Observation(new Hands.Off(), Pairs.NONE);
    private static final Observation Q = pressed("Q");
    private static final Observation W = pressed("W");
    private static final Observation EVERY_KEY = new Observation(new Hands.EveryKey(), Pairs.NONE);

    private static Observation pressed(String key) {
        return new Observation(new Hands.SomeKey(), Pairs.of(buzzout.session.Hands.pair(key)));
    }

    private static Evidence of(Observation... observations) {
        return new Evidence(List.of(observations));
    }

    @Test
    void equal_observations_are_counted() {
        assertEquals(2, of(QUIET, Q, W, Q).times().get(Q));
    }

    @Test
    void one_more_press_continues_it_wherever_it_stands() {
        assertTrue(of(QUIET, W, Q, Q).continues(of(QUIET, Q, W)));
    }

    @Test
    void without_a_press_it_had_it_continues_nothing() {
        assertFalse(of(QUIET, Q, W).continues(of(QUIET, Q, Q)));
        assertFalse(of(QUIET, W).continues(of(QUIET, Q)));
    }

    @Test
    void a_press_that_comes_after_all_were_said_to_be_pressed_may_be_the_one_that_was_missed() {
        assertTrue(of(QUIET, Q, EVERY_KEY).continues(of(QUIET, Q)));
        assertFalse(of(QUIET, Q, W, EVERY_KEY).continues(of(QUIET, Q, EVERY_KEY)));
        assertTrue(of(QUIET, Q, EVERY_KEY).continues(of(QUIET, Q, EVERY_KEY)));
    }
}
