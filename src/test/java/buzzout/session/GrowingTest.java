package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GrowingTest {
    private static final long SEED = 4;

    /** Depends on the order, and on each element. */
    private static final class Digits implements Summing.Sum<Integer, Digits> {
        private long value;

        private Digits(long value) {
            this.value = value;
        }

        private record To(int which) implements Summing<Integer, Digits> {
            @Override
            public Digits nothing() {
                return new Digits(0);
            }
        }

        @Override
        public void take(Integer element) {
            value = 31 * value + element;
        }

        @Override
        public Digits copy() {
            return new Digits(value);
        }
    }

    @Test
    void lists_that_grow_apart_from_each_other_come_each_to_its_own_sum() {
        Random random = new Random(SEED);
        List<Growing<Integer>> lists = new ArrayList<>(List.of(Growing.of(List.of())));
        for (int step = 0; step < 3_000; step++) {
            Growing<Integer> list = lists.get(random.nextInt(Math.min(30, lists.size())));
            int kind = random.nextInt(8);
            Growing<Integer> next = list.isEmpty() || kind > 1
                    ? list.with(step)
                    : kind == 0 ? list.first(list.size() - 1) : list.withLast(step);
            lists.add(0, next);
            Digits.To way = new Digits.To(random.nextInt(10) == 0 ? 1 : 0);
            Growing<Integer> alone = Growing.of(new ArrayList<>(next));
            assertEquals(alone.sum(way).value, next.sum(way).value, "step " + step + ", seed " + SEED);
            assertEquals(
                    next.stream().mapToLong(each -> each).reduce(0, (sum, each) -> 31 * sum + each),
                    alone.sum(way).value,
                    "step " + step + ", seed " + SEED);
        }
    }

    @Test
    void lists_are_equal_only_in_all_their_elements_and_in_their_number() {
        Growing<Integer> grown = Growing.of(List.of(1, 2)).with(3);
        assertEquals(grown, Growing.of(List.of(1, 2)).with(3));
        assertNotEquals(grown, grown.withLast(4));
        assertNotEquals(grown, grown.with(4));
        assertNotEquals(grown, grown.first(2));
        assertNotEquals(grown, Growing.of(List.of(0, 2, 3)));
    }

    /** Any list goes on to be read while others grow from it, as one thread draws what another has left behind. */
    @Test
    void whatever_grows_from_a_list_leaves_it_as_it_was() {
        Random random = new Random(SEED);
        List<Growing<Integer>> lists = new ArrayList<>(List.of(Growing.of(List.of())));
        List<List<Integer>> plain = new ArrayList<>(List.of(List.of()));
        for (int step = 0; step < 3_000; step++) {
            int from = random.nextInt(3) == 0 ? random.nextInt(lists.size()) : lists.size() - 1;
            Growing<Integer> list = lists.get(from);
            List<Integer> same = new ArrayList<>(plain.get(from));
            int kind = random.nextInt(6);
            if (kind == 0 && !same.isEmpty()) {
                list = list.first(same.size() - 1);
                same.remove(same.size() - 1);
            } else if (kind == 1 && !same.isEmpty()) {
                list = list.withLast(step);
                same.set(same.size() - 1, step);
            } else {
                list = list.with(step);
                same.add(step);
            }
            lists.add(list);
            plain.add(same);
        }
        for (int at = 0; at < lists.size(); at++) {
            assertEquals(plain.get(at), lists.get(at), "list " + at + ", seed " + SEED);
            assertEquals(lists.get(at), Growing.of(plain.get(at)), "list " + at + ", seed " + SEED);
        }
    }
}
