package buzzout.session;

import static buzzout.session.Hands.key;
import static buzzout.session.Hands.pair;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.session.Observation.Hands.Together;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Several keys are held together, and let go. */
class AllAtOnceTest {
    private static final Set<Integer> CORNER = keys("Q", "W", "A");
    private static final Set<Integer> SIDE = keys("E", "D");

    private static Set<Integer> keys(String... names) {
        return Arrays.stream(names).map(name -> key(name).index()).collect(Collectors.toSet());
    }

    private static Hands called() {
        return Hands.afterQuietCheck().say(new Action.CalledTogether(List.of(CORNER, SIDE)));
    }

    private static Hands hold(Hands hands, Pair... pairs) {
        for (Pair pair : pairs) {
            hands.close(pair).wait(60);
        }
        hands.wait(150);
        for (Pair pair : pairs) {
            hands.open(pair).wait(40);
        }
        return hands.wait(200);
    }

    @Test
    void what_stood_while_all_were_held_is_the_answer_and_the_next_are_called() {
        Hands hands = hold(called(), pair("Q"), pair("W"), pair("A"));
        AllAtOnce all = hands.session().allAtOnce();
        Pairs answer = Pairs.of(pair("Q"), pair("W"), pair("A"));
        assertEquals(List.of(new AllAtOnce.Tried(CORNER, answer)), all.tried());
        assertEquals(SIDE, all.called());
        assertEquals(List.of(), hands.presses());
        assertTrue(AllAtOnce.isAsComputed(Hands.PLAN, Pairs.NONE, CORNER, answer));
        List<Observation> observations = hands.session().evidence().observations();
        assertEquals(new Observation(new Together(CORNER), answer), observations.get(observations.size() - 1));
    }

    @Test
    void an_answer_that_is_not_as_computed_counts_when_it_comes_twice() {
        Pair ghost = new Pair(key("A").row(), key("Q").row());
        Hands hands = hold(called(), pair("Q"), pair("W"), pair("A"), ghost);
        assertEquals(List.of(), hands.session().allAtOnce().tried());
        assertEquals(
                Optional.of(Pairs.of(pair("Q"), pair("W"), pair("A"), ghost)),
                hands.session().allAtOnce().doubtful());
        hold(hands, pair("A"), ghost, pair("W"), pair("Q"));
        AllAtOnce.Tried tried = hands.session().allAtOnce().tried().get(0);
        assertFalse(AllAtOnce.isAsComputed(Hands.PLAN, Pairs.NONE, CORNER, tried.answer()));
        assertEquals(SIDE, hands.session().allAtOnce().called());
    }

    @Test
    void a_finger_that_missed_is_put_right_by_holding_again() {
        Hands hands = hold(called(), pair("Q"), pair("W"));
        assertEquals(CORNER, hands.session().allAtOnce().called());
        hold(hands, pair("Q"), pair("W"), pair("A"));
        assertEquals(1, hands.session().allAtOnce().tried().size());
    }

    @Test
    void fingers_that_only_brush_past_are_no_answer() {
        Hands hands = called();
        hands.close(pair("Q"))
                .wait(30)
                .close(pair("W"))
                .wait(30)
                .open(pair("Q"))
                .wait(30)
                .open(pair("W"));
        assertEquals(Optional.empty(), hands.session().allAtOnce().doubtful());
        assertEquals(List.of(), hands.session().allAtOnce().tried());
    }

    @Test
    void it_is_over_after_the_last_and_presses_count_again() {
        Hands hands = hold(hold(called(), pair("Q"), pair("W"), pair("A")), pair("E"), pair("D"));
        assertFalse(hands.session().allAtOnce().isOn());
        assertEquals(2, hands.session().allAtOnce().tried().size());
        assertEquals(KeyState.GOOD, hands.press("Q").state("Q"));
    }

    @Test
    void bounce_after_the_last_is_no_press() {
        Hands hands = hold(called(), pair("Q"), pair("W"), pair("A"));
        hands.close(pair("E")).close(pair("D")).wait(300).open(pair("E")).open(pair("D"));
        hands.wait(1).close(pair("E")).wait(2).open(pair("E")).wait(100);
        assertFalse(hands.session().allAtOnce().isOn());
        assertEquals(List.of(), hands.presses());
        assertEquals(1, hands.press("E").presses().size());
    }

    @Test
    void taking_back_calls_the_last_combination_again() {
        Hands hands = hold(called(), pair("Q"), pair("W"), pair("A")).say(new Action.TakenBack());
        assertEquals(CORNER, hands.session().allAtOnce().called());
        assertEquals(List.of(), hands.session().allAtOnce().tried());
    }

    @Test
    void an_empty_list_stops_it() {
        Hands hands = called().say(new Action.CalledTogether(List.of())).press("Q");
        assertEquals(KeyState.GOOD, hands.state("Q"));
    }
}
