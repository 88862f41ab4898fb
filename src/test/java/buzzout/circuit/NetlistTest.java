package buzzout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class NetlistTest {
    private static final Plan SMALL = PlanReader.read("""
                    name = "Small"
                    controller = "ATmega32U4"
                    [rows]
                    R1 = { pin = "D0", keys = "A B" }
                    [columns]
                    C1 = { pin = "D4", keys = "A" }
                    C2 = { pin = "D6", keys = "B" }
                    """, "small.toml").plan().orElseThrow();

    @Test
    void a_good_board_is_written_part_by_part() {
        assertEquals("""
                pin D0 n0
                pin D4 n1
                pin D6 n2
                rise D0 0.666
                rise D4 0.576
                rise D6 0.576
                wire n3 n4
                wire n0 n3
                wire n1 n5
                wire n2 n6
                switch A n5 n8
                diode n8 n3
                switch B n6 n9
                diode n9 n4
                ground n7
                """, Netlist.text(SMALL, List.of()));
    }

    @Test
    void every_kind_of_fault_changes_the_netlist() {
        Plan plan = ExamplePlan.quayside();
        String good = Netlist.text(plan, List.of());
        List<FaultKind> unchanged = new ArrayList<>();
        for (FaultKind kind : FaultKind.values()) {
            boolean all = kind.all(plan).stream()
                    .allMatch(fault -> !Netlist.text(plan, List.of(fault)).equals(good));
            if (!all) {
                unchanged.add(kind);
            }
        }
        assertEquals(List.of(), unchanged);
    }

    @Test
    void held_bypassed_turned_and_dead_keys_are_told_apart() {
        assertTrue(faulty("held:A").contains("switch A n5 n8\nwire n5 n8\ndiode n8 n3\n"));
        assertTrue(faulty("bypassed:A").contains("switch A n5 n8\nwire n8 n3\nswitch B"));
        assertTrue(faulty("reversed:A").contains("switch A n5 n8\ndiode n3 n8\n"));
        assertTrue(faulty("dead:A").contains("switch A n5 n8\nswitch B"));
        assertTrue(faulty("pin-dragged:C1").contains("led n1\n"));
        assertTrue(faulty("pin-low:C1").contains("wire n1 n7\n"));
    }

    private static String faulty(String code) {
        return Netlist.text(SMALL, List.of(Catalogue.find(SMALL, code).orElseThrow()));
    }
}
