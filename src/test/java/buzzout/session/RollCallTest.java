package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.diagnosis.Campaign;
import buzzout.diagnosis.Grids;
import buzzout.diagnosis.Priors;
import buzzout.plan.Controllers;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The order of calls, and that each key gets its call. */
class RollCallTest {
    private static final Plan QUAYSIDE = ExamplePlan.quayside();

    static Stream<Plan> plans() {
        return Stream.of(QUAYSIDE, Grids.branching5x12(), Grids.plain(Controllers.ATMEGA32U4, 1, 7));
    }

    @ParameterizedTest
    @MethodSource("plans")
    void on_a_sound_board_every_key_is_called_exactly_once_and_the_board_is_good(Plan plan) {
        CalledBoard board = begun(plan, List.of()).pressAll();
        assertEquals(plan.keys().size(), board.called().size());
        assertEquals(new HashSet<>(plan.keys()), new HashSet<>(board.called()));
        assertEquals(plan.keys().size(), board.session().count(KeyState.GOOD));
        assertEquals(OptionalInt.empty(), board.session().called());
    }

    @ParameterizedTest
    @MethodSource("plans")
    void on_faulty_boards_too_every_key_is_called_exactly_once(Plan plan) {
        for (int seed = 0; seed < 30; seed++) {
            List<Fault> faults = Campaign.likelyFaults(new Random(seed), plan, Priors.judged(), 3);
            CalledBoard board = begun(plan, faults).pressAll();
            assertEquals(plan.keys().size(), board.called().size(), "seed " + seed);
            assertEquals(new HashSet<>(plan.keys()), new HashSet<>(board.called()), "seed " + seed);
        }
    }

    @Test
    void after_a_key_that_gave_nothing_one_is_called_that_shares_a_net_with_it() {
        Hands hands = Hands.afterQuietCheck().say(new Action.RollCallBegun());
        for (int good = 0; good < 2; good++) {
            Key key = next(hands);
            hands.say(new Action.Called(key.index())).wait(500).press(key.name());
        }
        Key silent = next(hands);
        hands.say(new Action.Called(silent.index())).wait(500).say(new Action.NothingCame(silent.index()));
        Key after = next(hands);
        assertTrue(
                after.row() == silent.row() || after.column() == silent.column(),
                silent.name() + ", then " + after.name());
    }

    private static Key next(Hands hands) {
        return Hands.PLAN.keys().get(NextCall.of(hands.session()).orElseThrow());
    }

    @Test
    void the_same_session_always_calls_the_same_key() {
        List<Fault> faults = Campaign.likelyFaults(new Random(5), QUAYSIDE, Priors.judged(), 3);
        CalledBoard once = begun(QUAYSIDE, faults).pressAll();
        assertEquals(once.called(), begun(QUAYSIDE, faults).pressAll().called());
        Session replayed = Session.of(QUAYSIDE);
        for (Event event : once.events()) {
            if (event instanceof Event.ByPerson by && by.action() instanceof Action.Called named) {
                assertEquals(OptionalInt.of(named.key()), NextCall.of(replayed));
            }
            replayed = replayed.after(event);
        }
        assertEquals(once.session(), replayed);
    }

    /** Boards on which the quiet check shows nothing; a fault is seen at the first answer that is not as planned. */
    @ParameterizedTest
    @MethodSource("plans")
    void a_fault_is_seen_after_fewer_calls_than_in_reading_order(Plan plan) {
        int boards = 0;
        int inOrder = 0;
        int asCalled = 0;
        for (int seed = 0; boards < 300; seed++) {
            List<Fault> faults =
                    Campaign.likelyFaults(new Random(seed), plan, Priors.judged(), 1 + new Random(seed).nextInt(3));
            Circuit circuit = Circuit.of(plan, faults);
            if (circuit.quiet().low().isEmpty()
                    && firstWrong(plan, circuit, plan.keys()) < plan.keys().size()) {
                boards++;
                inOrder += firstWrong(plan, circuit, plan.keys()) + 1;
                asCalled +=
                        firstWrong(plan, circuit, begun(plan, faults).pressAll().called()) + 1;
            }
        }
        System.out.printf(
                "%s, %d boards with 1 to 3 faults drawn by the priors (seeds from 0), calls until a fault is seen:"
                        + " %.1f in reading order, %.1f as called%n",
                plan.name(), boards, inOrder / (double) boards, asCalled / (double) boards);
        assertTrue(asCalled <= inOrder, inOrder + " calls in reading order, " + asCalled + " as called");
    }

    private static int firstWrong(Plan plan, Circuit circuit, List<Key> order) {
        Circuit sound = Circuit.of(plan);
        return IntStream.range(0, order.size())
                .filter(index -> !circuit.pressed(order.get(index)).equals(sound.pressed(order.get(index))))
                .findFirst()
                .orElse(order.size());
    }

    private static CalledBoard begun(Plan plan, List<Fault> faults) {
        return new CalledBoard(plan, faults).say(new Action.RollCallBegun());
    }
}
