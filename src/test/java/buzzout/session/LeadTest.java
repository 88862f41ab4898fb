package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Circuit;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Joint;
import buzzout.plan.NetKind;
import buzzout.probe.ProbeEvent;
import buzzout.session.Observation.Hands.Touch;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The flying lead in a session on a sound Quayside 46. */
class LeadTest {
    private static final int SPARE = Hands.PLAN.sparePinIndex().orElseThrow();
    private static final Joint E_ON_R1 = new Joint(Hands.key("E").index(), NetKind.ROW);
    private static final Joint T_ON_C6 = new Joint(Hands.key("T").index(), NetKind.COLUMN);

    private static Pair[] met(Joint joint) {
        int net = joint.net(Hands.PLAN);
        return new Pair[] {new Pair(net, SPARE), new Pair(SPARE, net)};
    }

    private static Hands touch(Hands hands, Joint joint) {
        return hands.press(met(joint)).wait(400);
    }

    @Test
    void touches_are_no_presses_and_spoil_no_coverage() {
        Hands hands = touch(Hands.afterQuietCheck().press("E"), E_ON_R1);
        hands.close(met(T_ON_C6)[0]).close(met(T_ON_C6)[1]).wait(100).press("T");
        assertEquals(2, hands.presses().size());
        assertTrue(hands.presses().stream().noneMatch(Press::inCompany));
        assertEquals(KeyState.GOOD, hands.state("E"));
        assertEquals(KeyState.GOOD, hands.state("T"));
        assertEquals(
                3, hands.session().evidence().observations().size(), "the quiet check and two presses are evidence");
    }

    @Test
    void of_a_touch_and_a_press_the_later_one_is_taken_back_first() {
        Hands hands = Hands.afterQuietCheck().say(new Action.TouchCalled(E_ON_R1));
        touch(hands, E_ON_R1).press("T").say(new Action.TakenBack());
        assertEquals(List.of(), hands.presses());
        assertEquals(1, hands.session().lead().touches().size());
        hands.press("T").say(new Action.TouchCalled(T_ON_C6));
        touch(hands, T_ON_C6).say(new Action.TakenBack());
        assertEquals(1, hands.presses().size());
    }

    @Test
    void a_lead_that_lies_on_a_net_is_no_part_of_the_quiet_check() {
        Hands hands = Hands.afterQuietCheck(met(E_ON_R1));
        assertEquals(Pairs.NONE, hands.session().quiet());
        assertEquals(Pairs.of(met(E_ON_R1)), hands.session().lead().idle());
        assertEquals(Pairs.NONE, hands.session().lead().now());
    }

    @Test
    void a_touch_that_was_asked_for_is_evidence_about_its_joint() {
        Hands hands = Hands.afterQuietCheck().say(new Action.TouchCalled(E_ON_R1));
        assertEquals(Optional.of(E_ON_R1), hands.session().lead().called());
        touch(hands, E_ON_R1);
        assertEquals(Optional.empty(), hands.session().lead().called());
        hands.say(new Action.TouchCalled(T_ON_C6)).say(new Action.TouchedNothing(T_ON_C6));
        touch(hands, T_ON_C6);
        List<Observation> observations = hands.session().evidence().observations();
        assertEquals(
                List.of(
                        new Observation(
                                new Touch(E_ON_R1.net(Hands.PLAN), E_ON_R1.place(Hands.PLAN)), Pairs.of(met(E_ON_R1))),
                        new Observation(new Touch(T_ON_C6.net(Hands.PLAN), T_ON_C6.place(Hands.PLAN)), Pairs.NONE)),
                observations.subList(1, observations.size()),
                "the last touch was the person's own");
    }

    @Test
    void a_scraping_tip_makes_one_touch_and_never_answers_the_next_call() {
        Hands hands = Hands.afterQuietCheck().say(new Action.TouchCalled(E_ON_R1));
        hands.press(met(E_ON_R1)).say(new Action.TouchCalled(T_ON_C6)).press(met(E_ON_R1));
        assertEquals(1, hands.session().lead().touches().size());
        assertEquals(Optional.of(T_ON_C6), hands.session().lead().called());
        touch(hands.wait(400), T_ON_C6);
        assertEquals(2, hands.session().lead().touches().size());
    }

    @Test
    void a_tip_that_moves_on_to_another_net_makes_another_touch() {
        Hands hands = Hands.afterQuietCheck().press(met(E_ON_R1)).press(met(T_ON_C6));
        assertEquals(
                List.of(Pairs.of(met(E_ON_R1)), Pairs.of(met(T_ON_C6))),
                hands.session().lead().touches().stream()
                        .map(buzzout.session.Touch::pairs)
                        .toList());
    }

    @Test
    void what_a_pressed_key_adds_tells_the_key_and_is_no_evidence_of_the_joint() {
        BitSet down = new BitSet();
        down.set(Hands.key("E").index());
        Pairs pairs = Circuit.of(Hands.PLAN).touching(T_ON_C6).quiet().low();
        Joint onC4 = new Joint(Hands.key("C").index(), NetKind.COLUMN);
        Pairs held = Circuit.of(Hands.PLAN).touching(onC4).read(down).low();
        Hands hands = Hands.afterQuietCheck().say(new Action.TouchCalled(onC4));
        List.of(met(onC4)).forEach(hands::close);
        hands.wait(100);
        held.minus(Pairs.of(met(onC4))).list().forEach(hands::close);
        buzzout.session.Touch touch = hands.session().lead().last().orElseThrow();
        assertEquals(Pairs.of(met(onC4)), touch.unpressed());
        assertEquals(
                Set.of(onC4.net(Hands.PLAN)), Met.of(Hands.PLAN, touch.pairs()).bothWays());
        assertEquals(List.of(Hands.key("E")), Met.of(Hands.PLAN, touch.pairs()).keysDown(Hands.PLAN));
        assertEquals(Set.of(T_ON_C6.net(Hands.PLAN)), Met.of(Hands.PLAN, pairs).bothWays());
    }

    @Test
    void taking_back_takes_the_last_touch_and_asks_for_it_again() {
        Hands hands = Hands.afterQuietCheck().press("E").wait(10).say(new Action.TouchCalled(E_ON_R1));
        touch(hands, E_ON_R1).say(new Action.TakenBack());
        assertEquals(1, hands.presses().size());
        assertEquals(Optional.of(E_ON_R1), hands.session().lead().called());
        hands.say(new Action.TakenBack());
        assertEquals(Optional.empty(), hands.session().lead().called());
        assertEquals(1, hands.presses().size());
        hands.say(new Action.TakenBack());
        assertEquals(0, hands.presses().size());
    }

    @Test
    void touches_of_a_repaired_net_no_longer_count() {
        Hands hands = Hands.afterQuietCheck().say(new Action.TouchCalled(E_ON_R1));
        touch(hands, E_ON_R1).say(new Action.TouchCalled(T_ON_C6));
        touch(hands, T_ON_C6).say(new Action.Repaired("lead-off:R1"));
        hands.hear(new ProbeEvent.WholeState(9_000_000, Pairs.NONE)).say(new Action.QuietCheckDone());
        assertEquals(2, hands.session().evidence().observations().size());
    }
}
