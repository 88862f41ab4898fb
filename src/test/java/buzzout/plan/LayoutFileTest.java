package buzzout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class LayoutFileTest {
    private static final String HEAD = "name = \"Panel\"\ncontroller = \"ATmega32U4\"\n";
    private static final String LAYOUT = "[layout]\nlines = [\"A B C\", \"D E F\"]\n";

    @Test
    void a_layout_becomes_a_plan_whose_nets_are_called_as_their_pins() {
        Plan plan = read(HEAD + "pins = \"D0 D1 D2 F0 F1\"\n" + LAYOUT).plan().orElseThrow();
        assertTrue(plan.isMadeUp());
        assertEquals(List.of("D0", "D1", "D2", "F0", "F1"), plan.pins());
        assertEquals(6, plan.keys().size());
        assertEquals(new Place(2, 1, 1), plan.key("F").orElseThrow().place());
        assertEquals(
                Optional.of(plan),
                PlanReader.read(PlanText.of(plan, List.of()), "p").plan());
    }

    @Test
    void a_plan_is_read_as_the_plan_that_it_is() {
        Plan plan = LayoutFile.read(ExamplePlan.quaysideText(), "q").plan().orElseThrow();
        assertEquals(ExamplePlan.quayside(), plan);
        assertTrue(!plan.isMadeUp());
    }

    @Test
    void without_pins_all_that_the_controller_has_are_probed() {
        String keys = "[layout]\nlines = [\"A B C D E F G H I J K L M N\"]\n";
        assertEquals(
                Controllers.ATMEGA32U4.pins(),
                read(HEAD + keys).plan().orElseThrow().pins());
    }

    @Test
    void a_pin_that_is_not_there_is_named() {
        assertEquals(
                List.of(
                        "L:3:15: pin \"D9\" of the board is not on the ATmega32U4; it has B0-B7, C6-C7, D0-D7, E2, E6, F0-F1,"
                                + " F4-F7"),
                problems(HEAD + "pins = \"D0 D1 D9\"\n" + LAYOUT));
    }

    @Test
    void what_cannot_be_a_matrix_is_refused_with_what_to_do() {
        assertEquals(
                List.of("L:3:8: 6 keys on 4 pins cannot be a matrix; name in pins = \"...\" those that are wired"),
                problems(HEAD + "pins = \"D0 D1 D2 D3\"\n" + LAYOUT));
        assertEquals(
                List.of("L:1:1: 6 keys on 26 pins cannot be a matrix; name in pins = \"...\" those that are wired"),
                problems(HEAD + LAYOUT));
        assertEquals(
                List.of(
                        "L:1:1: the file has neither rows and columns nor a layout; add [layout] with lines = [\"Q W E\"]"),
                problems(HEAD));
    }

    @Test
    void keys_named_twice_and_pins_named_twice_are_told_with_their_places() {
        assertEquals(
                List.of(
                        "L:3:12: pin \"D0\" is named twice; take one out",
                        "L:5:18: key \"A\" is twice in the layout's lines; take one out"),
                problems(HEAD + "pins = \"D0 D0 F0\"\n[layout]\nlines = [\"A B\", \"A C\"]\n"));
    }

    @Test
    void any_number_of_keys_and_pins_gives_a_valid_plan_or_a_reason() {
        int guessed = 0;
        for (int pins = 1; pins <= 26; pins++) {
            for (int keys = 1; keys <= 90; keys++) {
                if (FirstGuess.obstacle(keys, pins).isPresent()) {
                    continue;
                }
                Map<String, Place> places = new LinkedHashMap<>();
                for (int key = 0; key < keys; key++) {
                    places.put("K" + key, new Place(key % 10, Math.floorDiv(key, 10), 1));
                }
                Plan plan = FirstGuess.of(
                        "Any",
                        Controllers.ATMEGA32U4,
                        Controllers.ATMEGA32U4.pins().subList(0, pins),
                        Optional.empty(),
                        10,
                        places);
                PlanFile file = PlanReader.read(PlanText.of(plan, List.of()), keys + " keys on " + pins + " pins");
                assertTrue(file.plan().isPresent(), () -> file.problems().toString());
                guessed++;
            }
        }
        assertTrue(guessed > 1000, "guessed " + guessed);
    }

    private static PlanFile read(String text) {
        return LayoutFile.read(text, "L");
    }

    private static List<String> problems(String text) {
        PlanFile file = read(text);
        assertTrue(file.plan().isEmpty());
        return file.problems().stream().map(Problem::toString).collect(Collectors.toList());
    }
}
