package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Fault;
import buzzout.circuit.LeadOff;
import buzzout.circuit.LinkOpen;
import buzzout.circuit.PinLow;
import buzzout.circuit.RiseTimes;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RiseTextTest {
    private static final Plan SMALL = PlanReader.read("""
                    name = "Small"
                    controller = "ATmega32U4"
                    spare = "B6"
                    [rows]
                    R1 = { pin = "D0", keys = "A B C" }
                    R2 = { pin = "D1", keys = "D E F" }
                    [columns]
                    C1 = { pin = "D4", keys = "A D" }
                    C2 = { pin = "D6", keys = "B E" }
                    C3 = { pin = "D7", keys = "C F" }
                    """, "small.toml").plan().orElseThrow();

    @Test
    void every_pin_has_a_line_and_an_odd_one_a_hint() {
        assertEquals("""
                pin     net           joints  rises in
                D0      row R1             3  0.8 us
                D1      row R2             3  does not rise: something holds it low
                D4      column C1          2  0.7 us
                D6      column C2          2  0.2 us
                D7      column C3          2  0.7 us
                B6      flying lead           1.3 us

                Hint: column C2 rises in 0.2 us, and as the other columns do it should take 0.7
                      us: there is little wire on D6. Its lead, or a link close to the pin, may
                      be open. A press of each of its keys will tell.

                `run --settle auto` waits 5 us with these: twice the slowest, at least 5 us.
                """, RiseText.of(SMALL, nanos(SMALL, new LeadOff(3), new PinLow(1)), 5, true));
    }

    @Test
    void a_good_board_has_no_hint() {
        Plan plan = ExamplePlan.quayside();
        assertFalse(RiseText.of(plan, nanos(plan), 5, false).contains("Hint"));
    }

    @Test
    void a_row_that_is_open_near_its_lead_has_one() {
        Plan plan = ExamplePlan.quayside();
        String text = RiseText.of(plan, nanos(plan, new LinkOpen(0, 0, false)), 5, false);
        assertTrue(text.contains("Hint: row R1 rises in"), text);
    }

    @Test
    void of_two_rows_nobody_can_say_which_is_odd() {
        assertFalse(RiseText.of(SMALL, nanos(SMALL, new LeadOff(0)), 5, false).contains("Hint"));
    }

    private static List<OptionalLong> nanos(Plan plan, Fault... faults) {
        RiseTimes rises = RiseTimes.of(plan, List.of(faults), false);
        return IntStream.range(0, plan.pins().size()).mapToObj(rises::nanos).toList();
    }
}
