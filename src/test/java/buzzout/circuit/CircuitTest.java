package buzzout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.Controller;
import buzzout.plan.Controllers;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What conducts, against the electrical check values of CHECKS.md. */
class CircuitTest {
    private static final Plan QUAYSIDE = ExamplePlan.quayside();

    static List<Controller> controllers() {
        return Controllers.ALL;
    }

    @Test
    void a_sound_board_conducts_nothing_at_rest_and_one_pair_for_each_key() {
        Circuit circuit = Circuit.of(QUAYSIDE);
        assertEquals(new Reading(Pairs.NONE, Pairs.NONE), circuit.quiet());
        for (Key key : QUAYSIDE.keys()) {
            Pairs planned = Pairs.of(new Pair(key.row(), key.column()));
            assertEquals(new Reading(planned, Pairs.NONE), circuit.pressed(key), key.name());
        }
    }

    /** CHECKS.md section 2, computed with ngspice: 0.42–0.60 V at 5 V and 0.38–0.53 V at 3.3 V, 0 to 50 °C. */
    @ParameterizedTest
    @MethodSource("controllers")
    void one_diode_is_always_a_sure_low(Controller controller) {
        double most = controller.supplyVolts() == 5 ? 0.60 : 0.53;
        assertTrue(most <= controller.lowVolts());
        assertTrue(controller.sureDiodes() >= 1);
    }

    /** The same section: two diodes are at 0.97–1.05 V, or 0.84–0.93 V at 3.3 V, above VIL max of 0.9 and 0.8 V. */
    @Test
    void two_diodes_lie_between_on_an_atmega32u4_and_an_rp2040() {
        assertEquals(1, Controllers.ATMEGA32U4.sureDiodes());
        assertEquals(1, Controllers.RP2040.sureDiodes());
    }

    /** The same section: two are at most 1.05 V, three up to 1.55 V; VIL max is 1.5 V (section 1, found). */
    @Test
    void two_diodes_but_not_three_are_sure_on_an_atmega328p() {
        assertEquals(2, Controllers.ATMEGA328P.sureDiodes());
    }

    /**
     * The same section, computed: one reversed diode among three held keys of a rectangle puts the bridging column at
     * 0.55–0.59 V, a true low; what lies behind one or two diodes more lies between on an ATmega32U4.
     */
    @Test
    void a_reversed_diode_lets_three_held_keys_of_a_rectangle_bring_a_fourth_between() {
        Key esc = key("Esc");
        Key q = key("Q");
        Key tab = key("Tab");
        BitSet held = new BitSet();
        Stream.of(esc, q, tab).forEach(key -> held.set(key.index()));
        Reading reading =
                Circuit.of(QUAYSIDE, List.of(new DiodeReversed(esc.index()))).read(held);
        Pair bridging = new Pair(tab.row(), tab.column());
        Pair phantom = new Pair(tab.row(), q.column());
        assertTrue(reading.low().contains(bridging));
        assertFalse(reading.low().contains(phantom));
        assertTrue(reading.between().contains(phantom));

        Reading sound = Circuit.of(QUAYSIDE).read(held);
        assertEquals(3, sound.low().count());
        assertEquals(Pairs.NONE, sound.between());
    }

    @Test
    void readings_between_may_be_seen_either_way() {
        Reading reading = new Reading(Pairs.of(new Pair(0, 1)), Pairs.of(new Pair(0, 2)));
        assertTrue(reading.agreesWith(Pairs.of(new Pair(0, 1))));
        assertTrue(reading.agreesWith(Pairs.of(new Pair(0, 1), new Pair(0, 2))));
        assertFalse(reading.agreesWith(Pairs.of(new Pair(0, 2))));
        assertFalse(reading.agreesWith(Pairs.of(new Pair(0, 1), new Pair(1, 0))));
    }

    private static Key key(String name) {
        return QUAYSIDE.key(name).orElseThrow();
    }
}
