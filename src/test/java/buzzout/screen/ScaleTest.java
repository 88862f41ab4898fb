package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.plan.Side;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ScaleTest {
    private static final long SEED = 20261125;

    @Test
    void keys_side_by_side_share_an_edge_and_a_double_one_is_twice_as_wide() {
        Scale scale = Scale.fitting(Views.QUAYSIDE, Side.CAP, 80, 12);
        assertEquals(new Scale.Box(0, 0, 6, 2), box(scale, "Esc"));
        assertEquals(new Scale.Box(6, 0, 12, 2), box(scale, "Q"));
        assertEquals(new Scale.Box(24, 6, 36, 8), box(scale, "Space"));
    }

    @Test
    void the_solder_side_is_the_mirror_image() {
        Scale caps = Scale.fitting(Views.QUAYSIDE, Side.CAP, 80, 12);
        Scale solder = Scale.fitting(Views.QUAYSIDE, Side.SOLDER, 80, 12);
        for (Key key : Views.QUAYSIDE.keys()) {
            Scale.Box front = caps.box(key.place());
            int right = caps.columns() - 1;
            assertEquals(
                    new Scale.Box(right - front.right(), front.top(), right - front.left(), front.bottom()),
                    solder.box(key.place()));
        }
    }

    @Test
    void no_two_keys_are_drawn_over_each_other_and_none_outside() {
        Random random = new Random(SEED);
        for (int board = 0; board < 200; board++) {
            Plan plan = Boards.random(random);
            Side side = random.nextBoolean() ? Side.CAP : Side.SOLDER;
            Scale scale = Scale.fitting(plan, side, 80 + random.nextInt(120), 10 + random.nextInt(40));
            String which = "board " + board + " of seed " + SEED;
            boolean[][] inside = new boolean[scale.rows()][scale.columns()];
            for (Key key : plan.keys()) {
                Scale.Box box = scale.box(key.place());
                assertTrue(box.right() < scale.columns() && box.left() >= 0, which);
                for (int row = box.top() + (scale.isBoxed() ? 1 : 0);
                        row <= box.bottom() - (scale.isBoxed() ? 1 : 0);
                        row++) {
                    for (int column = box.left() + 1; column < box.right(); column++) {
                        assertTrue(!inside[row][column], which);
                        inside[row][column] = true;
                    }
                }
            }
        }
    }

    @Test
    void a_scale_that_has_room_for_words_has_room_for_the_longest() {
        Scale scale = Scale.fitting(Views.QUAYSIDE, Side.CAP, 200, 50);
        assertEquals(4, scale.down());
        assertTrue(scale.across() - 1 >= "intermittent".length());
    }

    private static Scale.Box box(Scale scale, String key) {
        return scale.box(Views.QUAYSIDE.key(key).orElseThrow().place());
    }
}
