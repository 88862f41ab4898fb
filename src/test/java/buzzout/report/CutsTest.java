package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.report.Cut.Use;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Lengths reckoned by hand for a board of two by two keys, 38.1 mm square. */
class CutsTest {
    private static final double EXACT = 1e-9;
    private final Plan plan = WiringPictureTest.small("row", "rows");
    private final List<Cut> cuts = Cuts.of(plan);

    @Test
    void a_column_of_two_is_one_link_and_two_joints() {
        Cut red = cut("C1", Use.RUN);
        assertEquals(19.05 + 4 + 4, red.length(), EXACT);
        assertEquals(2, red.bareAt().get(0), EXACT);
        assertEquals(2 + 19.05 + 4, red.bareAt().get(1), EXACT);
    }

    @Test
    void a_row_of_legs_takes_wire_for_its_jumper_only() {
        assertEquals(19.05 + 4 + 4, cut("R2", Use.JUMPER).length(), EXACT);
        assertTrue(cuts.stream().noneMatch(cut -> cut.net().name().equals("R1") && cut.use() != Use.LEAD));
    }

    @Test
    void a_lead_goes_along_the_board_to_the_middle_of_the_far_edge() {
        // R1.1 lies 9.525 - 6.6 from the left edge and 9.525 + 6.6 from the far one; the middle is at 19.05.
        assertEquals((19.05 - 2.925) + 16.125 + 40, cut("R1", Use.LEAD).length(), EXACT);
        // C2.2, key D: 28.575 + 6.6 from the left, 28.575 - 6.2 from the far edge.
        assertEquals((35.175 - 19.05) + 22.375 + 40, cut("C2", Use.LEAD).length(), EXACT);
    }

    @Test
    void the_sum_by_colour_is_that_of_the_pieces() {
        double redLead = Math.abs(9.525 + 6.6 - 19.05) + (9.525 - 6.2) + 40;
        assertEquals(27.05 + redLead, Cuts.byColour(cuts).getOrDefault(Optional.of("red"), 0.0), EXACT);
        assertEquals(
                cuts.stream().mapToDouble(Cut::length).sum(),
                Cuts.byColour(cuts).values().stream().mapToDouble(each -> each).sum(),
                EXACT);
    }

    @Test
    void a_gap_that_no_leg_reaches_across_takes_wire() {
        List<String> reaches = Cuts.of(ExamplePlan.quayside()).stream()
                .filter(cut -> cut.use() == Use.REACH)
                .map(cut -> cut.joints().get(0).number(ExamplePlan.quayside()))
                .toList();
        assertEquals(List.of("R4.4", "R4.6"), reaches);
    }

    private Cut cut(String net, Use use) {
        return cuts.stream()
                .filter(cut -> cut.net().name().equals(net) && cut.use() == use)
                .findFirst()
                .orElseThrow();
    }
}
