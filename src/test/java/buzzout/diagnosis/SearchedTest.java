package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SearchedTest {
    private static final Plan PLAN = ExamplePlan.quayside();
    private static final Fault FAULT = Catalogue.find(PLAN, "reversed:O").orElseThrow();
    private static final Effort THOROUGH = Effort.thorough(() -> false);

    private final Case board = new Case(PLAN, Priors.judged());
    private final Hypothesis nothing = board.weigh(new BitSet());

    private Hypothesis found(Effort effort) {
        Set<Term> focus = board.costs(nothing).keySet();
        return Search.best(board, nothing, focus, Search.Taste.WHOLE, effort);
    }

    @Test
    void a_question_is_searched_for_once() {
        board.take(RollCall.complete(PLAN, List.of(FAULT)));
        assertEquals(List.of(FAULT), board.charges().faults(found(THOROUGH).charged()));
        assertSame(found(THOROUGH), found(THOROUGH));
    }

    @Test
    void what_was_broken_off_is_searched_for_again() {
        board.take(RollCall.complete(PLAN, List.of(FAULT)));
        assertTrue(found(Effort.thorough(() -> true)).charged().isEmpty(), "no time to find anything");
        assertEquals(List.of(FAULT), board.charges().faults(found(THOROUGH).charged()));
    }

    @Test
    void nothing_is_remembered_beyond_the_evidence() {
        Evidence evidence = RollCall.complete(PLAN, List.of(FAULT));
        board.take(evidence);
        Hypothesis found = found(THOROUGH);
        board.take(evidence);
        assertNotSame(found, found(THOROUGH));
    }
}
