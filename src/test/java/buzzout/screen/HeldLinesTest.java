package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.session.Action;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is told while keys are held. */
class HeldLinesTest {
    private static List<String> told(Sitting sitting) {
        return sitting.snapshot().events().lines().stream()
                .map(EventLines.Line::text)
                .filter(text -> text.contains("dropped") || text.contains("together"))
                .toList();
    }

    @Test
    void each_dropout_is_told_with_its_time() {
        assertEquals(
                List.of(
                        "E dropped out for 18.0 ms",
                        "R dropped out for 18.0 ms",
                        "E dropped out for 42.0 ms",
                        "R dropped out for 42.0 ms",
                        "E dropped out for 7.0 ms"),
                told(Views.flexing()));
    }

    @Test
    void a_dropout_that_goes_on_is_told_once_by_its_whole_time_and_a_release_that_bounces_not_at_all() {
        Sitting sitting = Views.flexing().wait(500);
        int before = told(sitting).size();
        sitting.move(false, 2)
                .wait(3)
                .move(true, 2)
                .wait(2)
                .move(false, 2)
                .wait(4)
                .move(true, 2)
                .wait(300);
        assertEquals("W dropped out for 9.0 ms", told(sitting).get(before));
        sitting.move(false, 2).wait(1).move(true, 2).wait(1).move(false, 2);
        assertEquals(before + 1, told(sitting).size());
    }

    @Test
    void an_answer_is_told_beside_what_was_computed() {
        assertEquals(
                List.of(
                        "Q, W, A and S together: as computed",
                        "E and D together: R1→R2 appeared, which nothing should close; hold them once more"),
                told(Views.holding()));
        Sitting missed = Views.holding();
        missed.tell(new Action.TakenBack());
        assertEquals(2, told(missed).size());
    }
}
