package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Circuit;
import buzzout.circuit.KeyOpen;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Session;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which tone a change deserves. On this board G and H answer with company, and V is silent. */
class TonesTest {
    private static Sitting pressing() {
        return Views.sitting().found().quietCheckDone();
    }

    private static Session press(String... keys) {
        return press(pressing(), keys);
    }

    private static Session press(Sitting sitting, String... keys) {
        for (String key : keys) {
            sitting.press(Views.key(key).index());
        }
        return sitting.snapshot().session();
    }

    @Test
    void a_key_that_answers_as_planned_is_good_each_time() {
        assertEquals(Optional.of(Tone.GOOD), Tones.between(press(), press("Q")));
        assertEquals(Optional.of(Tone.GOOD), Tones.between(press("Q"), press("Q", "Q")));
    }

    @Test
    void any_other_answer_is_wrong() {
        assertEquals(Optional.of(Tone.WRONG), Tones.between(press(), press("G")));
    }

    @Test
    void the_neighbour_of_a_called_key_is_wrong() {
        Session before = pressing()
                .tell(new Action.Called(Views.key("W").index()))
                .snapshot()
                .session();
        Session after = press(pressing().tell(new Action.Called(Views.key("W").index())), "Q");
        assertEquals(Optional.of(Tone.WRONG), Tones.between(before, after));
    }

    @Test
    void of_several_presses_the_one_that_needs_the_person_is_told() {
        assertEquals(Optional.of(Tone.WRONG), Tones.between(press(), press("Q", "G", "W")));
        assertEquals(Optional.of(Tone.NOTHING), Tones.between(press(), press("Q", "V", "W")));
    }

    @Test
    void company_that_closes_late_turns_good_into_wrong() {
        Sitting sitting = pressing().hear(new ProbeEvent.Closed(5_000_000, Views.pair("Q")));
        Session early = sitting.snapshot().session();
        Session late = sitting.hear(new ProbeEvent.Closed(5_004_000, Views.pair("W")))
                .snapshot()
                .session();
        assertEquals(Optional.of(Tone.GOOD), Tones.between(press(), early));
        assertEquals(Optional.of(Tone.WRONG), Tones.between(early, late));
    }

    @Test
    void a_release_a_word_taken_back_and_a_note_are_silent() {
        Sitting sitting = pressing().hear(new ProbeEvent.Closed(5_000_000, Views.pair("Q")));
        Session down = sitting.snapshot().session();
        Session up = sitting.hear(new ProbeEvent.Opened(5_100_000, Views.pair("Q")))
                .snapshot()
                .session();
        assertEquals(Optional.empty(), Tones.between(down, up));
        assertEquals(
                Optional.empty(),
                Tones.between(
                        press("Q", "G"),
                        press(pressing(), "Q", "G")
                                .after(new buzzout.session.Event.ByPerson(9_000, new Action.TakenBack()))));
        assertEquals(Optional.empty(), Tones.between(up, up));
    }

    @Test
    void the_end_of_the_quiet_check_and_the_last_key_are_steps_done() {
        assertEquals(
                Optional.of(Tone.DONE),
                Tones.between(Views.sitting().found().snapshot().session(), press()));
        Sitting good =
                new Sitting(Views.QUAYSIDE, Circuit.of(Views.QUAYSIDE)).found().quietCheckDone();
        for (int key = 0; key < 45; key++) {
            good.press(key);
        }
        Session before = good.snapshot().session();
        assertEquals(
                Optional.of(Tone.DONE),
                Tones.between(before, good.press(45).snapshot().session()));
    }

    @Test
    void a_last_key_that_is_wrong_sounds_wrong() {
        Sitting board = new Sitting(
                        Views.QUAYSIDE, Circuit.of(Views.QUAYSIDE, List.of(Views.bridge(), new KeyOpen(45))))
                .found()
                .quietCheckDone();
        for (int key = 0; key < 46; key++) {
            if (key != Views.key("G").index()) {
                board.press(key);
            }
        }
        Session before = board.snapshot().session();
        Session after = board.press(Views.key("G").index()).snapshot().session();
        assertEquals(Optional.of(Tone.WRONG), Tones.between(before, after));
    }

    @Test
    void a_dropout_and_an_answer_that_was_not_computed_are_wrong_and_one_that_was_is_good() {
        Sitting flex = pressing().tell(new Action.FlexBegun()).wait(500).move(true, 1);
        Session held = flex.snapshot().session();
        Session open = flex.wait(500).move(false, 1).snapshot().session();
        Session back = flex.wait(20).move(true, 1).snapshot().session();
        assertEquals(Optional.empty(), Tones.between(held, open));
        assertEquals(Optional.of(Tone.WRONG), Tones.between(open, back));

        Session called = pressing()
                .tell(new Action.CalledTogether(List.of(Set.of(1, 2), Set.of(3, 4))))
                .snapshot()
                .session();
        Sitting together = pressing().tell(new Action.CalledTogether(List.of(Set.of(1, 2), Set.of(3, 4))));
        Session one = together.wait(500)
                .move(true, 1, 2)
                .wait(200)
                .move(false, 1, 2)
                .snapshot()
                .session();
        assertEquals(Optional.of(Tone.GOOD), Tones.between(called, one));
        Session missed = together.wait(500)
                .move(true, 3)
                .wait(200)
                .move(false, 3)
                .snapshot()
                .session();
        assertEquals(Optional.of(Tone.WRONG), Tones.between(one, missed));
        Session all = together.wait(500)
                .move(true, 3, 4)
                .wait(200)
                .move(false, 3, 4)
                .snapshot()
                .session();
        assertEquals(Optional.of(Tone.DONE), Tones.between(missed, all));
    }

    @Test
    void a_link_that_goes_down_is_wrong_once() {
        Session up = press("Q");
        Session down = up.after(new buzzout.session.Event.FromProbe(9_000, new ProbeEvent.LinkLost("gone")));
        assertEquals(Optional.of(Tone.WRONG), Tones.between(up, down));
        assertEquals(Optional.empty(), Tones.between(down, down));
    }
}
