package buzzout.session;

import static buzzout.session.Hands.key;
import static buzzout.session.Hands.pair;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Bridge;
import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.KeyOpen;
import buzzout.diagnosis.Reader;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.session.Observation.Hands.EveryKey;
import buzzout.session.Observation.Hands.Read;
import buzzout.session.Observation.Hands.SomeKey;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadThroughTest {
    private static final Plan PLAN = buzzout.session.Hands.PLAN;
    private static final List<Integer> ALL =
            IntStream.range(0, PLAN.keys().size()).boxed().toList();

    @Test
    void a_sound_board_read_without_a_slip_is_good_key_by_key() {
        Session session = new Reader(PLAN, List.of()).readThrough(ALL);
        assertEquals(46, session.count(KeyState.GOOD));
        assertEquals(ALL, read(session));
    }

    @Test
    void at_a_silent_keys_turn_nothing_is_read() {
        Session session = new Reader(PLAN, List.of(new KeyOpen(index("V")))).readThrough(ALL);
        assertEquals(KeyState.SILENT, state(session, "V"));
        assertEquals(45, session.count(KeyState.GOOD));
        assertEquals(
                session.quiet(),
                session.evidence().observations().stream()
                        .filter(observation -> observation.hands().equals(new Read(index("V"))))
                        .findFirst()
                        .orElseThrow()
                        .seen());
    }

    @Test
    void a_key_left_out_looks_silent_until_it_is_pressed() {
        Reader reader = new Reader(PLAN, List.of());
        List<Integer> order = new ArrayList<>(ALL);
        order.remove(Integer.valueOf(index("V")));
        assertEquals(KeyState.SILENT, state(reader.readThrough(order), "V"));
        reader.press(index("V"));
        assertEquals(46, reader.session().count(KeyState.GOOD));
        assertFalse(reader.session().evidence().observations().stream()
                .anyMatch(observation -> observation.hands().equals(new Read(index("V")))));
    }

    @Test
    void twice_and_the_other_way_about_are_slips_and_no_faults() {
        List<Integer> order = new ArrayList<>(ALL);
        order.add(index("G"), index("G"));
        Collections.swap(order, order.indexOf(index("P")), order.indexOf(index("P")) + 1);
        Session session = new Reader(PLAN, List.of()).readThrough(order);
        assertEquals(46, session.count(KeyState.GOOD));
        assertEquals(47, read(session).size());
    }

    @Test
    void a_neighbour_instead_is_read_at_the_turn_of_the_key_that_was_meant() {
        List<Integer> order = new ArrayList<>(ALL);
        order.set(index("V"), index("F"));
        Session session = new Reader(PLAN, List.of()).readThrough(order);
        assertEquals(KeyState.MISPLACED, state(session, "V"));
        assertEquals(45, session.count(KeyState.GOOD));
    }

    @ParameterizedTest
    @ValueSource(strings = {"swapped:R1:R2", "far-swapped:R1:R3", "mirrored", "turned", "swapped:C5:C6", "lead-off:R2"})
    void keys_keep_their_turns_where_whole_nets_answer_elsewhere(String code) {
        Fault fault = Catalogue.find(PLAN, code).orElseThrow();
        Session session = new Reader(PLAN, List.of(fault)).readThrough(ALL);
        assertEquals(ALL, read(session).stream().sorted().toList());
        assertEquals(Retest.keys(PLAN, fault).size(), 46 - session.count(KeyState.GOOD), () -> "" + session.states());
    }

    /** With C2 and C3 bridged, A and S give the same answer; once only, it may be either's. */
    @Test
    void of_keys_that_answer_alike_it_stays_open_which_was_left_out() {
        Fault bridge = new Bridge(key("A").column(), index("A"), key("S").column(), index("S"));
        List<Integer> order = new ArrayList<>(ALL);
        order.remove(index("S"));
        Session session = new Reader(PLAN, List.of(bridge)).readThrough(order);
        assertFalse(read(session).contains(index("A")) || read(session).contains(index("S")));
        assertEquals(
                7,
                hands(session).stream().filter(SomeKey.class::isInstance).count(),
                "the press of A or S, and those of the six other keys of the two columns, whose answers are odd");
        assertTrue(hands(session).contains(new EveryKey()));
    }

    @Test
    void while_it_runs_its_presses_are_of_free_choice() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck()
                .say(new Action.ReadThroughBegun())
                .press("Esc")
                .press("Q");
        assertTrue(hands.session().isReading());
        assertEquals(KeyState.GOOD, hands.state("Q"));
        assertEquals(KeyState.UNTESTED, hands.state("W"));
        assertEquals(
                2,
                hands(hands.session()).stream()
                        .filter(SomeKey.class::isInstance)
                        .count());
    }

    @Test
    void its_end_can_be_taken_back_and_then_its_presses_and_itself() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck().say(new Action.ReadThroughBegun());
        hands.press("Esc").press("Q");
        Session running = hands.session();
        hands.say(new Action.ReadThroughEnded());
        assertEquals(KeyState.SILENT, hands.state("W"));
        hands.say(new Action.TakenBack());
        assertEquals(running, hands.session());
        hands.say(new Action.TakenBack()).say(new Action.TakenBack()).say(new Action.TakenBack());
        assertFalse(hands.session().isReading());
        assertEquals(List.of(), hands.presses());
    }

    @Test
    void taking_its_beginning_back_leaves_what_was_pressed_before() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck()
                .press("G")
                .say(new Action.ReadThroughBegun())
                .say(new Action.TakenBack());
        assertFalse(hands.session().isReading());
        assertEquals(KeyState.GOOD, hands.state("G"));
    }

    @Test
    void that_all_were_pressed_is_taken_back_before_its_beginning() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck()
                .say(new Action.ReadThroughBegun())
                .say(new Action.AllPressed())
                .say(new Action.TakenBack());
        assertTrue(hands.session().isReading());
        assertEquals(KeyState.UNTESTED, hands.state("G"));
    }

    @Test
    void ended_before_its_first_press_it_says_nothing() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck()
                .say(new Action.ReadThroughBegun())
                .say(new Action.ReadThroughEnded());
        assertEquals(46, hands.session().count(KeyState.UNTESTED));
        assertFalse(hands.session().isReading());
    }

    @Test
    void what_gets_lost_on_the_way_breaks_it_off() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck()
                .say(new Action.ReadThroughBegun())
                .press("Esc")
                .hear(new ProbeEvent.Lost(2));
        assertFalse(hands.session().isReading());
        assertEquals(KeyState.GOOD, hands.state("Esc"));
        hands.say(new Action.ReadThroughEnded());
        assertEquals(KeyState.UNTESTED, hands.state("Q"));
    }

    @Test
    void an_unplug_breaks_it_off() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck()
                .say(new Action.ReadThroughBegun())
                .press("Esc")
                .hear(new ProbeEvent.LinkLost("unplugged"));
        assertFalse(hands.session().isReading());
        assertEquals(KeyState.GOOD, hands.state("Esc"));
    }

    @Test
    void a_roll_call_breaks_it_off() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck()
                .say(new Action.ReadThroughBegun())
                .press("Esc")
                .say(new Action.RollCallBegun());
        assertFalse(hands.session().isReading());
        hands.say(new Action.ReadThroughEnded());
        assertEquals(KeyState.UNTESTED, hands.state("Q"));
    }

    @Test
    void its_end_stands_once_another_key_is_pressed_or_gives_nothing() {
        for (boolean presses : List.of(true, false)) {
            buzzout.session.Hands hands =
                    buzzout.session.Hands.afterQuietCheck().say(new Action.ReadThroughBegun());
            hands.press("Esc").press("Q").say(new Action.ReadThroughEnded());
            int read = hands.presses().size();
            if (presses) {
                hands.press("W");
            } else {
                hands.say(new Action.NothingCame(index("W")));
            }
            assertEquals(read + 1, hands.presses().size());
            hands.say(new Action.TakenBack());
            assertEquals(read + 1, hands.presses().size(), "only that every key was pressed");
            hands.say(new Action.TakenBack());
            assertEquals(read, hands.presses().size(), "only the last press");
        }
    }

    /** Rolled over, a press proves its key only by answering exactly as planned; a key unproven is not silent. */
    @Test
    void a_press_in_company_that_proves_nothing_leaves_its_key_untested() {
        buzzout.session.Hands hands = buzzout.session.Hands.afterQuietCheck().say(new Action.ReadThroughBegun());
        for (Key each : PLAN.keys()) {
            if (each.name().equals("W")) {
                hands.close(pair("Q"))
                        .wait(40)
                        .close(pair("W"))
                        .close(pair("S"))
                        .wait(80);
                hands.open(pair("Q")).open(pair("W")).open(pair("S")).wait(80);
            } else if (!each.name().equals("Q")) {
                hands.press(each.name());
            }
        }
        hands.say(new Action.ReadThroughEnded());
        assertEquals(45, hands.session().count(KeyState.GOOD));
        assertEquals(KeyState.UNTESTED, hands.state("W"));
    }

    private static int index(String name) {
        return key(name).index();
    }

    private static KeyState state(Session session, String name) {
        return session.states().get(index(name));
    }

    private static List<Observation.Hands> hands(Session session) {
        return session.evidence().observations().stream()
                .map(Observation::hands)
                .toList();
    }

    /** The keys that observations are about, in their order. */
    private static List<Integer> read(Session session) {
        return hands(session).stream()
                .filter(Read.class::isInstance)
                .map(hands -> ((Read) hands).key())
                .toList();
    }
}
