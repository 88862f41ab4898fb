package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExamplePlanTest {
    @Test
    void it_has_no_problems() {
        assertEquals(
                List.of(),
                PlanReader.read(ExamplePlan.quaysideText(), ExamplePlan.QUAYSIDE_FILE_NAME)
                        .problems());
    }

    @Test
    void it_stands_in_a_file_too_for_whoever_reads_this_project() throws IOException {
        Path file = Path.of("sessions", ExamplePlan.QUAYSIDE_FILE_NAME);
        assertEquals(Files.readString(file), ExamplePlan.quaysideText());
    }

    @Test
    void it_has_46_keys_and_fits_in_40_lines() {
        assertEquals(46, ExamplePlan.quayside().keys().size());
        assertTrue(ExamplePlan.quaysideText().lines().count() <= 40);
    }

    @Test
    void its_bottom_row_is_as_wide_as_the_others() {
        Plan plan = ExamplePlan.quayside();
        for (String last : List.of("Back", "'", "Up", "Right")) {
            Place place = plan.key(last).orElseThrow().place();
            assertEquals(12, place.x() + place.width());
        }
        assertEquals(2, plan.key("Space").orElseThrow().place().width());
    }

    @Test
    void its_rows_each_have_one_jumper_between_the_halves() {
        Plan plan = ExamplePlan.quayside();
        for (Net row : plan.nets(NetKind.ROW)) {
            List<Link> jumpers = row.links().stream().filter(Link::jumper).toList();
            assertEquals(1, jumpers.size());
            Place right = SolderSide.keyAt(plan, row, jumpers.get(0).to()).place();
            assertEquals(6, right.x());
        }
    }

    @Test
    void its_pins_have_no_traps() {
        Plan plan = ExamplePlan.quayside();
        plan.pins().forEach(pin -> assertTrue(plan.controller().trap(pin).isEmpty(), pin));
        assertEquals(17, plan.pins().size());
    }
}
