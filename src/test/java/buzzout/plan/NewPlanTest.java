package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NewPlanTest {
    @Test
    void four_by_twelve_on_every_controller_has_no_problems() {
        for (Controller controller : Controllers.ALL) {
            PlanFile file = PlanReader.read(NewPlan.text(4, 12, controller), "new.toml");
            assertEquals(List.of(), file.problems(), controller.name());
            assertTrue(file.plan().orElseThrow().sparePin().isPresent(), controller.name());
        }
    }

    @Test
    void random_sizes_come_back_as_the_boards_they_were() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Controller controller = Controllers.ALL.get(random.nextInt(Controllers.ALL.size()));
            int rows = 1 + random.nextInt(31);
            int columns = 1 + random.nextInt(31);
            String what = "seed " + seed + ": " + rows + "x" + columns + " on " + controller.name();
            if (NewPlan.obstacle(rows, columns, controller).isEmpty()) {
                PlanFile file = PlanReader.read(NewPlan.text(rows, columns, controller), "new.toml");
                assertTrue(file.plan().isPresent(), () -> what + " " + file.problems());
                assertIsRegular(file.plan().orElseThrow(), rows, columns, what);
            } else {
                assertThrows(IllegalArgumentException.class, () -> NewPlan.text(rows, columns, controller), what);
            }
        }
    }

    private static void assertIsRegular(Plan plan, int rows, int columns, String what) {
        assertEquals(rows, plan.nets(NetKind.ROW).size(), what);
        assertEquals(columns, plan.nets(NetKind.COLUMN).size(), what);
        assertEquals(rows * columns, plan.keys().size(), what);
        for (Key key : plan.keys()) {
            assertEquals(key.index() / columns, key.row(), what);
            assertEquals(rows + key.index() % columns, key.column(), what);
            assertEquals(new Place(key.index() % columns, key.row(), 1), key.place(), what);
        }
        for (Net net : plan.nets()) {
            List<Link> chain = IntStream.range(1, net.joints().size())
                    .mapToObj(to -> new Link(to - 1, to, false))
                    .toList();
            assertEquals(chain, net.links(), what);
            assertEquals(0, net.leadJoint(), what);
            assertTrue(
                    net.joints().stream().allMatch(key -> plan.keys().get(key).net(net.kind()) == plan.indexOf(net)));
        }
    }

    @Test
    void notes_come_only_when_the_pins_without_a_trap_are_used_up() {
        assertEquals(
                List.of(),
                PlanReader.read(NewPlan.text(6, 12, Controllers.ATMEGA32U4), "new.toml")
                        .problems());
        List<Problem> problems = PlanReader.read(NewPlan.text(6, 13, Controllers.ATMEGA32U4), "new.toml")
                .problems();
        assertEquals(
                List.of("new.toml:36:15: note: pin B0 of C13 has a LED on many boards, which keeps a pull-up from"
                        + " raising it"),
                problems.stream().map(Problem::toString).toList());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0  | 12 | ATmega32U4 | a board has one row and one column at least; ask for a size such as 4x12
            4  | -1 | ATmega32U4 | a board has one row and one column at least; ask for a size such as 4x12
            7  | 12 | ATmega328P | a board of 7x12 needs 19 pins; the ATmega328P has 18, the RP2040 would do
            20 | 20 | ATmega32U4 | a board of 20x20 needs 40 pins; the ATmega32U4 has 26, the ATmega2560 would do
            32 | 32 | ATmega2560 | a board of 32x32 needs 64 pins; 63 is the most, so split the board
            2147483647 | 1 | RP2040 | a board of 2147483647x1 needs 2147483648 pins; 63 is the most, so split the board
            """)
    void a_size_that_the_controller_has_no_pins_for_is_refused(
            int rows, int columns, String controller, String message) {
        assertEquals(
                Optional.of(message),
                NewPlan.obstacle(rows, columns, Controllers.named(controller).orElseThrow()));
    }
}
