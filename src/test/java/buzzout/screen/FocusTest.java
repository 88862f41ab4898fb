package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.plan.Side;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FocusTest {
    private final Plan plan = Views.QUAYSIDE;

    @Test
    void arrows_follow_the_drawing_on_both_sides() {
        assertEquals("W", moved(on("Q"), 1, 0));
        assertEquals("Esc", moved(on("Q"), -1, 0));
        assertEquals("Esc", moved(on("Q").flipped(), 1, 0));
        assertEquals("W", moved(on("Q").flipped(), -1, 0));
        assertEquals("A", moved(on("Q"), 0, 1));
        assertEquals("A", moved(on("Q").flipped(), 0, 1));
    }

    @Test
    void arrows_stop_at_the_edges() {
        assertEquals("Esc", moved(on("Esc"), -1, 0));
        assertEquals("Esc", moved(on("Esc"), 0, -1));
        assertEquals("Right", moved(on("Right"), 1, 0));
        assertEquals("Right", moved(on("Right"), 0, 1));
    }

    @Test
    void wide_keys_are_one_step() {
        assertEquals("Space", moved(on("Alt"), 1, 0));
        assertEquals("Enter", moved(on("Space"), 1, 0));
        assertEquals("Mode", moved(on("Enter"), 1, 0));
        assertEquals("Space", moved(on("V"), 0, 1));
        assertEquals("Space", moved(on("B"), 0, 1));
    }

    @Test
    void every_key_of_any_board_can_be_reached() {
        long seed = 20261125;
        Random random = new Random(seed);
        for (int board = 0; board < 200; board++) {
            Plan any = Boards.random(random);
            assertEquals(any.keys().size(), reached(any).size(), "board " + board + " of seed " + seed);
        }
    }

    @Test
    void moving_leaves_the_chosen_finding() {
        Focus reading = on("Q").choosing(1, key("R").index(), 4);
        assertEquals(OptionalInt.empty(), reading.moved(plan, 1, 0).finding());
    }

    @Test
    void the_key_just_pressed_is_selected() {
        Bench bench = new Bench(plan);
        Snapshot before = bench.now();
        bench.ask(new Request.Press(key("M").index()));
        Focus after = on("Q").following(before.session(), bench.now().session());
        assertEquals("M", plan.keys().get(after.selected()).name());
        assertEquals(
                on("Q"), on("Q").following(bench.now().session(), bench.now().session()));
    }

    private static Set<Integer> reached(Plan plan) {
        Set<Integer> reached = new java.util.HashSet<>(Set.of(0));
        java.util.Deque<Integer> open = new java.util.ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            Focus at = new Focus(Side.CAP, open.pop(), OptionalInt.empty(), 0, false);
            for (int[] step : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
                int to = at.moved(plan, step[0], step[1]).selected();
                assertTrue(to >= 0 && to < plan.keys().size());
                if (reached.add(to)) {
                    open.push(to);
                }
            }
        }
        return reached;
    }

    private Key key(String name) {
        return plan.key(name).orElseThrow();
    }

    private Focus on(String name) {
        return new Focus(Side.CAP, key(name).index(), OptionalInt.empty(), 0, false);
    }

    private String moved(Focus focus, int right, int down) {
        return plan.keys().get(focus.moved(plan, right, down).selected()).name();
    }
}
