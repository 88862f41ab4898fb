package buzzout.session;

import static buzzout.session.Hands.key;
import static buzzout.session.Hands.pair;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.probe.ProbeEvent;
import buzzout.session.Observation.Hands.Flexed;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Keys are held and the plate is flexed. */
class FlexCheckTest {
    private static Hands holding(String... keys) {
        Hands hands = Hands.afterQuietCheck().say(new Action.FlexBegun());
        for (String key : keys) {
            hands.close(pair(key)).wait(40);
        }
        return hands.wait(200);
    }

    private static Hands drop(Hands hands, int millis, String... keys) {
        for (String key : keys) {
            hands.open(pair(key));
        }
        hands.wait(millis);
        for (String key : keys) {
            hands.close(pair(key));
        }
        return hands.wait(100);
    }

    private static Set<Integer> keys(String... names) {
        return Arrays.stream(names).map(name -> key(name).index()).collect(Collectors.toSet());
    }

    private static List<FlexCheck.Dropout> dropouts(Hands hands) {
        return hands.session().flex().dropouts();
    }

    @Test
    void what_is_held_is_no_press() {
        Hands hands = holding("Q", "W");
        assertEquals(List.of(), hands.presses());
        assertEquals(keys("Q", "W"), hands.session().flex().held());
        assertEquals(List.of(), dropouts(hands));
    }

    @Test
    void a_held_key_that_opens_and_comes_back_dropped_out() {
        Hands hands = drop(holding("Q"), 30, "Q");
        assertEquals(1, dropouts(hands).size());
        assertEquals(30_000, dropouts(hands).get(0).micros());
        assertEquals(KeyState.INTERMITTENT, hands.state("Q"));
    }

    @Test
    void chatter_within_a_dropout_is_one_dropout() {
        Hands hands = holding("Q");
        hands.open(pair("Q")).wait(3).close(pair("Q")).wait(2).open(pair("Q")).wait(5);
        hands.close(pair("Q")).wait(100);
        assertEquals(
                List.of(10_000L),
                dropouts(hands).stream().map(FlexCheck.Dropout::micros).toList());
    }

    @Test
    void bounce_when_a_key_is_pressed_or_let_go_is_none() {
        Hands hands = Hands.afterQuietCheck().say(new Action.FlexBegun());
        hands.close(pair("Q")).wait(2).open(pair("Q")).wait(3).close(pair("Q")).wait(300);
        hands.open(pair("Q")).wait(1).close(pair("Q")).wait(2).open(pair("Q")).wait(300);
        assertEquals(List.of(), dropouts(hands));
        assertEquals(Set.of(), hands.session().flex().held());
    }

    @Test
    void a_key_pressed_again_after_a_second_was_let_go() {
        assertEquals(List.of(), dropouts(drop(holding("Q"), 1_001, "Q")));
        assertEquals(1, dropouts(drop(holding("Q"), 1_000, "Q")).size());
    }

    @Test
    void keys_that_drop_within_two_sweeps_dropped_together() {
        Hands hands = drop(holding("E", "R", "Q", "A"), 20, "E", "R");
        hands.open(pair("E"))
                .wait(4)
                .open(pair("R"))
                .wait(20)
                .close(pair("E"))
                .close(pair("R"))
                .wait(100);
        drop(hands, 50, "A");
        List<FlexCheck.Pattern> patterns = hands.session().flex().patterns();
        assertEquals(
                List.of(
                        new FlexCheck.Pattern(keys("E", "R"), keys("Q", "A"), 2, 24_000),
                        new FlexCheck.Pattern(keys("A"), keys("Q", "E", "R"), 1, 50_000)),
                patterns);
    }

    @Test
    void the_blame_lies_on_the_way_of_all_that_dropped_and_of_none_that_stayed() {
        Hands hands = drop(holding("E", "R", "W", "D"), 20, "E", "R");
        FlexCheck.Pattern pattern = hands.session().flex().patterns().get(0);
        List<String> common = CommonPath.of(Hands.PLAN, pattern.dropped(), pattern.stayed()).stream()
                .map(fault -> fault.code(Hands.PLAN))
                .toList();
        assertEquals(List.of("open:R1:W:E"), common, "the lead is at Esc, W stayed, and D stayed on E's column");
        assertEquals(
                List.of("open:R1:Esc:Q", "open:R1:Q:W", "open:R1:W:E", "lead-off:R1"),
                CommonPath.of(Hands.PLAN, keys("E", "R"), Set.of()).stream()
                        .map((Fault fault) -> fault.code(Hands.PLAN))
                        .toList());
    }

    @Test
    void a_dropout_is_an_answer_of_nothing_and_who_stayed_gave_its_own() {
        Hands hands = drop(holding("E", "W"), 20, "E");
        List<Observation> flexed = hands.session().evidence().observations().stream()
                .filter(each -> each.hands() instanceof Flexed)
                .toList();
        assertEquals(
                List.of(
                        new Observation(new Flexed(key("E").index()), Pairs.NONE),
                        new Observation(new Flexed(key("W").index()), Pairs.of(pair("W")))),
                flexed);
        assertFalse(holding("E", "W").session().evidence().observations().stream()
                .anyMatch(each -> each.hands() instanceof Flexed));
    }

    @Test
    void taking_back_forgets_those_that_dropped_last_and_a_repair_all_of_them() {
        Hands hands = drop(drop(holding("E", "R"), 20, "E", "R"), 20, "E");
        assertEquals(3, dropouts(hands).size());
        assertEquals(2, dropouts(hands.say(new Action.TakenBack())).size());
        hands.say(new Action.FlexOver());
        assertEquals(2, dropouts(hands).size(), "what was found stays known");
        Action repaired = new Action.Repaired("open:R1:W:E");
        assertEquals(List.of(), dropouts(hands.say(repaired).say(repaired)));
    }

    @Test
    void an_unplug_is_no_dropout() {
        Hands hands = holding("E");
        hands.hear(new ProbeEvent.LinkLost("unplugged")).wait(300);
        hands.hear(new ProbeEvent.WholeState(100, Pairs.of(pair("E")))).wait(100);
        assertEquals(List.of(), dropouts(hands));
        assertEquals(keys("E"), hands.session().flex().held());
    }

    @Test
    void a_key_let_go_after_its_end_bounces_without_being_a_press() {
        Hands hands = holding("Q").say(new Action.FlexOver());
        hands.wait(500)
                .open(pair("Q"))
                .wait(2)
                .close(pair("Q"))
                .wait(3)
                .open(pair("Q"))
                .wait(100);
        assertEquals(List.of(), hands.presses());
        assertEquals(List.of(), dropouts(hands));
        assertEquals(1, hands.press("Q").presses().size());
    }

    @Test
    void after_it_presses_count_again() {
        Hands hands = holding("Q");
        hands.open(pair("Q")).wait(100).say(new Action.FlexOver()).press("W");
        assertEquals(1, hands.presses().size());
        assertEquals(KeyState.GOOD, hands.state("W"));
        assertEquals(KeyState.UNTESTED, hands.state("Q"));
    }
}
