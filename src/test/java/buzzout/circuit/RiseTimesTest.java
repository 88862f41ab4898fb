package buzzout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

class RiseTimesTest {
    private static final Plan PLAN = ExamplePlan.quayside();
    private static final RiseTimes GOOD = RiseTimes.of(PLAN, List.of(), false);

    /** CHECKS.md section 3, computed there: a 40 cm column with five switches, a 60 cm row of fifteen. */
    @Test
    void a_column_and_a_row_weigh_what_their_wire_and_switches_do() {
        assertEquals(56, RiseTimes.planned(5), 1);
        assertEquals(110, RiseTimes.planned(15), 1);
    }

    /** R·C·0.478 on an ATmega32U4 (CHECKS.md section 3), a pull-up of 35 kΩ. */
    @Test
    void a_pin_rises_as_its_pull_up_charges_what_hangs_on_it() {
        for (int pin = 0; pin < PLAN.nets().size(); pin++) {
            double picofarads = RiseTimes.planned(PLAN.nets().get(pin).joints().size());
            assertEquals(
                    35e3 * picofarads * 1e-3 * 0.478, (double) GOOD.nanos(pin).getAsLong(), 2);
        }
    }

    @Test
    void a_pin_whose_lead_is_off_rises_as_a_bare_one() {
        RiseTimes off = RiseTimes.of(PLAN, List.of(new LeadOff(0)), false);
        assertEquals(OptionalLong.of(RiseTimes.bareNanos(PLAN.controller())), off.nanos(0));
        assertEquals(GOOD.nanos(1), off.nanos(1));
    }

    @Test
    void a_row_that_is_open_after_its_first_joint_rises_sooner() {
        assertTrue(RiseTimes.of(PLAN, List.of(new LinkOpen(0, 0, false)), false)
                        .nanos(0)
                        .getAsLong()
                < GOOD.nanos(0).getAsLong() / 2);
    }

    @Test
    void bridged_pins_rise_together_no_later_than_the_slower_alone() {
        Fault bridge = Catalogue.find(PLAN, "bridge:C2:C3:A:S").orElseThrow();
        RiseTimes bridged = RiseTimes.of(PLAN, List.of(bridge), false);
        int first = netNamed("C2");
        int second = netNamed("C3");
        assertEquals(bridged.nanos(first), bridged.nanos(second));
        assertTrue(bridged.nanos(first).getAsLong()
                <= Math.max(GOOD.nanos(first).getAsLong(), GOOD.nanos(second).getAsLong()));
    }

    @Test
    void a_pin_that_is_held_low_never_rises() {
        assertEquals(
                OptionalLong.empty(),
                RiseTimes.of(PLAN, List.of(new PinLow(2)), false).nanos(2));
    }

    @Test
    void a_pin_beside_a_led_rises_where_what_lies_between_reads_high() {
        List<Fault> dragged = List.of(new PinDragged(2));
        assertEquals(GOOD.nanos(2), RiseTimes.of(PLAN, dragged, false).nanos(2));
        assertEquals(OptionalLong.empty(), RiseTimes.of(PLAN, dragged, true).nanos(2));
    }

    private static int netNamed(String name) {
        return PLAN.nets().stream().map(Net::name).toList().indexOf(name);
    }
}
