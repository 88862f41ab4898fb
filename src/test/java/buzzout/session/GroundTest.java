package buzzout.session;

import static buzzout.session.Hands.key;
import static buzzout.session.Hands.pair;
import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.circuit.Pair;
import buzzout.session.Observation.Hands.NetFell;
import buzzout.session.Observation.Hands.Off;
import buzzout.session.Observation.Hands.SomeKey;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nets of Quayside 46 that meet ground: for good, or for a moment. */
class GroundTest {
    private static final int ROW = key("Q").row();
    private static final int COLUMN = key("Q").column();

    /** What reads low while a net is on ground. */
    private static Pair[] onGround(int net) {
        return IntStream.range(0, Hands.PLAN.nets().size())
                .filter(low -> low != net)
                .mapToObj(low -> new Pair(low, net))
                .toArray(Pair[]::new);
    }

    private static List<Observation.Hands> hands(Hands hands) {
        return hands.session().evidence().observations().stream()
                .map(Observation::hands)
                .toList();
    }

    @Test
    void a_net_that_stands_on_ground_holds_no_key() {
        assertEquals(46, Hands.afterQuietCheck(onGround(COLUMN)).session().count(KeyState.UNTESTED));
    }

    @Test
    void a_key_of_another_column_is_held_all_the_same() {
        Pair[] closed =
                Stream.concat(Stream.of(onGround(COLUMN)), Stream.of(pair("W"))).toArray(Pair[]::new);
        Hands hands = Hands.afterQuietCheck(closed);
        assertEquals(KeyState.HELD, hands.state("W"));
        assertEquals(1, hands.session().count(KeyState.HELD));
    }

    @Test
    void a_column_that_all_pins_but_one_reach_is_not_on_ground() {
        Pair[] closed = Stream.of(onGround(COLUMN)).skip(1).toArray(Pair[]::new);
        assertEquals(
                Stream.of(closed)
                        .filter(low -> Hands.PLAN.keys().stream()
                                .anyMatch(key -> key.row() == low.low() && key.column() == COLUMN))
                        .count(),
                Hands.afterQuietCheck(closed).session().count(KeyState.HELD));
    }

    @Test
    void a_net_that_meets_ground_for_a_moment_is_no_keys_press() {
        for (int net : List.of(ROW, COLUMN)) {
            Hands hands = Hands.afterQuietCheck().press(onGround(net));
            assertEquals(46, hands.session().count(KeyState.UNTESTED));
            assertEquals(OptionalInt.empty(), hands.presses().get(0).presumed());
            assertEquals(List.of(new Off(), new NetFell(net)), hands(hands));
        }
    }

    @Test
    void it_answers_no_call_either() {
        Hands hands =
                Hands.afterQuietCheck().say(new Action.Called(key("W").index())).press(onGround(COLUMN));
        assertEquals(KeyState.UNTESTED, hands.state("W"));
        assertEquals(List.of(new Off(), new NetFell(COLUMN)), hands(hands));
    }

    @Test
    void what_all_pins_but_one_close_is_some_keys_press() {
        Hands hands = Hands.afterQuietCheck()
                .press(Stream.of(onGround(COLUMN)).skip(1).toArray(Pair[]::new));
        assertEquals(List.of(new Off(), new SomeKey()), hands(hands));
    }

    @Test
    void while_a_row_stands_on_ground_its_keys_take_their_columns_with_them() {
        Hands hands = Hands.afterQuietCheck(onGround(ROW)).press(onGround(COLUMN));
        assertEquals(List.of(new Off(), new SomeKey()), hands(hands));
        assertEquals(
                COLUMN,
                Hands.PLAN
                        .keys()
                        .get(hands.presses().get(0).presumed().orElseThrow())
                        .column());
    }
}
