package buzzout.session;

import static buzzout.session.Hands.key;
import static buzzout.session.Hands.pair;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.probe.ProbeEvent;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Events to presses, and presses to the state of each key. */
class SessionTest {
    @Test
    void nothing_is_a_press_before_the_quiet_check_is_done() {
        Hands hands = new Hands().close(pair("Q")).open(pair("Q"));
        assertEquals(Stage.NO_PROBE, hands.session().stage());
        assertEquals(List.of(), hands.presses());
        assertEquals(Evidence.NONE, hands.session().evidence());
    }

    @Test
    void each_press_is_credited_to_the_key_that_closes_such_a_pair() {
        Hands hands = Hands.afterQuietCheck().press("Q").press("Space");
        assertEquals(
                List.of(
                        OptionalInt.of(key("Q").index()),
                        OptionalInt.of(key("Space").index())),
                hands.presses().stream().map(Press::key).toList());
        assertEquals(KeyState.GOOD, hands.state("Q"));
        assertEquals(KeyState.GOOD, hands.state("Space"));
        assertEquals(44, hands.session().count(KeyState.UNTESTED));
    }

    @Test
    void a_contact_that_bounces_is_one_press() {
        Hands hands = Hands.afterQuietCheck();
        for (int bounce = 0; bounce < 4; bounce++) {
            hands.close(pair("Q")).wait(2).open(pair("Q")).wait(4);
        }
        hands.press("Q").press("W");
        assertEquals(2, hands.presses().size());
    }

    @Test
    void pressing_the_same_key_again_is_another_press() {
        assertEquals(2, Hands.afterQuietCheck().press("Q").press("Q").presses().size());
    }

    @Test
    void pairs_that_close_together_are_one_press_with_company() {
        Hands hands = Hands.afterQuietCheck();
        hands.close(pair("T")).wait(3).close(pair("Y")).wait(60).open(pair("T")).open(pair("Y"));
        assertEquals(1, hands.presses().size());
        assertEquals(Pairs.of(pair("T"), pair("Y")), hands.presses().get(0).pairs());
        assertEquals(KeyState.DOUBLED, hands.state("T"));
    }

    @Test
    void fingers_that_roll_over_make_two_presses_and_both_keys_good() {
        Hands hands = Hands.afterQuietCheck();
        hands.close(pair("Q"))
                .wait(60)
                .close(pair("W"))
                .wait(30)
                .open(pair("Q"))
                .wait(60)
                .open(pair("W"));
        assertEquals(2, hands.presses().size());
        assertFalse(hands.presses().get(0).inCompany());
        assertTrue(hands.presses().get(1).inCompany());
        assertEquals(KeyState.GOOD, hands.state("Q"));
        assertEquals(KeyState.GOOD, hands.state("W"));
    }

    @Test
    void a_strange_answer_while_another_key_is_down_proves_nothing() {
        Hands hands = Hands.afterQuietCheck();
        hands.close(pair("Q")).wait(60).close(pair("W")).close(pair("S"));
        assertEquals(KeyState.GOOD, hands.state("Q"));
        assertEquals(KeyState.UNTESTED, hands.state("W"));
        assertEquals(2, hands.session().evidence().observations().size(), "the quiet check and Q");
    }

    @Test
    void answers_the_wrong_way_round_and_both_ways_are_told_apart() {
        Pair o = pair("O");
        Pair p = pair("P");
        Hands hands = Hands.afterQuietCheck().press(o.turned()).press(p, p.turned());
        assertEquals(KeyState.REVERSED, hands.state("O"));
        assertEquals(KeyState.TWO_WAY, hands.state("P"));
    }

    @Test
    void the_called_key_gets_the_press_whatever_answers() {
        Hands hands =
                Hands.afterQuietCheck().say(new Action.Called(key("Q").index())).press("W");
        assertEquals(OptionalInt.of(key("Q").index()), hands.presses().get(0).key());
        assertEquals(KeyState.MISPLACED, hands.state("Q"));
        assertEquals(KeyState.UNTESTED, hands.state("W"));
    }

    @Test
    void nothing_came_makes_a_key_silent_and_every_key_pressed_all_the_others() {
        Hands hands = Hands.afterQuietCheck().press("Q").say(new Action.NothingCame(key("W").index()));
        assertEquals(KeyState.SILENT, hands.state("W"));
        assertEquals(KeyState.UNTESTED, hands.state("E"));
        hands.say(new Action.AllPressed());
        assertEquals(KeyState.SILENT, hands.state("E"));
        assertEquals(KeyState.GOOD, hands.state("Q"));
    }

    @Test
    void a_key_that_answers_at_one_time_and_not_at_another_is_intermittent() {
        Hands hands = Hands.afterQuietCheck().press("Q").say(new Action.NothingCame(key("Q").index()));
        assertEquals(KeyState.INTERMITTENT, hands.state("Q"));
    }

    @Test
    void what_conducts_through_the_quiet_check_is_held_and_no_press() {
        Hands hands = Hands.afterQuietCheck(pair("Ctrl")).press("Q");
        assertEquals(KeyState.HELD, hands.state("Ctrl"));
        assertEquals(1, hands.presses().size());
        assertEquals(Pairs.of(pair("Q")), hands.presses().get(0).pairs());
    }

    @Test
    void taking_back_removes_the_last_press_or_word_and_calls_its_key_again() {
        Hands hands = Hands.afterQuietCheck()
                .press("Q")
                .say(new Action.Called(key("W").index()))
                .press("E")
                .say(new Action.TakenBack());
        assertEquals(KeyState.UNTESTED, hands.state("W"));
        assertEquals(OptionalInt.of(key("W").index()), hands.session().called());
        hands.say(new Action.AllPressed()).say(new Action.TakenBack());
        assertFalse(hands.session().everyKeyPressed());
        assertEquals(1, hands.presses().size(), "Q is still pressed");
        hands.say(new Action.TakenBack()).say(new Action.TakenBack());
        assertEquals(List.of(), hands.presses());
    }

    @Test
    void a_slip_that_is_taken_back_while_its_key_is_down_bounces_for_nothing() {
        Hands hands = Hands.afterQuietCheck()
                .say(new Action.Called(key("W").index()))
                .close(pair("E"))
                .wait(60)
                .say(new Action.TakenBack());
        hands.wait(500).open(pair("E")).wait(3).close(pair("E")).wait(3).open(pair("E"));
        assertEquals(List.of(), hands.presses());
        assertEquals(OptionalInt.of(key("W").index()), hands.session().called());
        hands.wait(200).press("W");
        assertEquals(KeyState.GOOD, hands.state("W"));
        assertEquals(OptionalInt.empty(), hands.session().called(), "answered");
    }

    @Test
    void a_repair_makes_exactly_the_keys_untested_that_it_can_have_changed() {
        Hands hands = Hands.afterQuietCheck();
        Hands.PLAN.keys().forEach(key -> hands.press(key.name()));
        assertEquals(46, hands.session().count(KeyState.GOOD));
        hands.say(new Action.Repaired("open:R3:M:,"));
        assertEquals(Stage.REPAIRING, hands.session().stage());
        assertEquals(46, hands.session().count(KeyState.GOOD), "nothing has been repaired yet");
        hands.say(new Action.QuietCheckDone());
        assertEquals(42, hands.session().count(KeyState.GOOD));
        Set.of(",", ".", "/", "Up").forEach(key -> assertEquals(KeyState.UNTESTED, hands.state(key), key));
    }

    @Test
    void an_unplug_lets_go_of_what_was_held_and_keeps_every_press() {
        Hands hands = Hands.afterQuietCheck().press("Q").close(pair("W"));
        hands.hear(new ProbeEvent.LinkLost("unplugged"));
        assertTrue(hands.session().linkTrouble().isPresent());
        assertEquals(Pairs.NONE, hands.session().now());
        hands.hear(new ProbeEvent.Found(hands.session().probe().orElseThrow(), "port"));
        hands.hear(new ProbeEvent.WholeState(0, Pairs.NONE));
        assertTrue(hands.session().linkTrouble().isEmpty());
        assertEquals(Stage.PRESSING, hands.session().stage());
        assertEquals(KeyState.GOOD, hands.state("Q"));
        assertEquals(KeyState.GOOD, hands.state("W"));
    }

    @Test
    void a_whole_state_stands_for_the_changes_that_were_lost() {
        Hands hands = Hands.afterQuietCheck().close(pair("Q")).wait(60);
        hands.hear(new ProbeEvent.Lost(3));
        hands.hear(new ProbeEvent.WholeState(2_060_000, Pairs.of(pair("W"))));
        assertEquals(3, hands.session().lostChanges());
        assertEquals(Pairs.of(pair("W")), hands.session().now());
        assertEquals(KeyState.GOOD, hands.state("Q"));
        assertEquals(KeyState.GOOD, hands.state("W"));
    }

    @Test
    void what_was_lost_and_what_made_no_sense_adds_up() {
        Hands hands = Hands.afterQuietCheck().press("Q");
        hands.hear(new ProbeEvent.Lost(3)).hear(new ProbeEvent.Garbled(4, "x"));
        hands.hear(new ProbeEvent.Lost(2)).hear(new ProbeEvent.Garbled(3, "y"));
        assertEquals(5, hands.session().lostChanges());
        assertEquals(7, hands.session().garbledLines());
    }

    @Test
    void a_probe_that_refuses_is_told_of_and_one_that_is_found_again_ends_that() {
        Hands hands = new Hands().hear(new ProbeEvent.Refused("too old"));
        assertEquals(Optional.of("too old"), hands.session().linkTrouble());
        assertEquals(Optional.empty(), Hands.afterQuietCheck().session().linkTrouble());
    }

    @Test
    void a_session_that_was_ended_goes_on_with_a_quiet_check_and_its_presses() {
        Hands hands = Hands.afterQuietCheck().press("Q").say(new Action.Ended());
        assertEquals(Stage.ENDED, hands.session().stage());
        hands.hear(new ProbeEvent.Found(hands.session().probe().orElseThrow(), "port"));
        assertEquals(Stage.QUIET_CHECK, hands.session().stage());
        assertEquals(KeyState.GOOD, hands.state("Q"));
    }

    @Test
    void a_session_that_was_ended_in_a_repair_goes_on_with_its_retest() {
        Hands hands = Hands.afterQuietCheck();
        Hands.PLAN.keys().forEach(key -> hands.press(key.name()));
        hands.say(new Action.Repaired("open:R3:M:,")).say(new Action.Ended());
        hands.hear(new ProbeEvent.Found(hands.session().probe().orElseThrow(), "port"));
        assertEquals(Stage.QUIET_CHECK, hands.session().stage());
        assertEquals(4, hands.session().toCall().size());
    }

    @Test
    void a_repair_is_tested_once_and_not_after_each_unplug() {
        Hands hands = Hands.afterQuietCheck();
        hands.say(new Action.Repaired("dead:Up")).say(new Action.QuietCheckDone());
        hands.press("Up").press("Q").hear(new ProbeEvent.LinkLost("unplugged"));
        hands.hear(new ProbeEvent.Found(hands.session().probe().orElseThrow(), "port"));
        assertEquals(Stage.PRESSING, hands.session().stage());
        assertEquals(KeyState.GOOD, hands.state("Up"));
        hands.say(new Action.Repaired("dead:Q")).say(new Action.QuietCheckDone());
        assertEquals(KeyState.GOOD, hands.state("Up"), "repaired before, and not again");
        assertEquals(KeyState.UNTESTED, hands.state("Q"));
    }

    @Test
    void a_press_while_another_key_is_down_is_no_answer_to_a_call() {
        Hands hands = Hands.afterQuietCheck().close(pair("Q")).wait(60);
        hands.say(new Action.Called(key("W").index()));
        hands.close(pair("E")).wait(30).open(pair("E"));
        assertEquals(OptionalInt.of(key("W").index()), hands.session().called());
        assertEquals(OptionalInt.of(key("E").index()), hands.presses().get(1).key());
    }

    @Test
    void leaving_the_roll_call_leaves_no_key_called() {
        Hands hands = Hands.afterQuietCheck()
                .say(new Action.RollCallBegun())
                .say(new Action.Called(key("W").index()))
                .say(new Action.RollCallLeft())
                .press("E");
        assertEquals(Optional.empty(), hands.session().rollCall());
        assertEquals(KeyState.GOOD, hands.state("E"));
        assertEquals(KeyState.UNTESTED, hands.state("W"));
    }

    @Test
    void another_key_that_lets_go_is_no_bounce_of_the_one_pressed_last() {
        Hands hands = Hands.afterQuietCheck();
        hands.close(pair("Q")).wait(60).close(pair("W")).wait(30);
        Contact before = hands.presses().get(1).contact();
        hands.open(pair("Q"));
        assertEquals(before, hands.presses().get(1).contact());
        hands.wait(30).open(pair("W"));
        assertNotEquals(before, hands.presses().get(1).contact());
    }

    @Test
    void every_event_leaves_the_session_before_it_as_it_was() {
        Session before = Hands.afterQuietCheck().press("Q").session();
        Session kept = Hands.afterQuietCheck().press("Q").session();
        before.after(new Event.ByPerson(9_000, new Action.TakenBack()));
        assertEquals(kept, before);
    }
}
