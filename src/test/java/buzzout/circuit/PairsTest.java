package buzzout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sets of pairs behave as the library's sets do. */
class PairsTest {
    private static final Comparator<Pair> ORDER =
            Comparator.comparingInt(Pair::low).thenComparingInt(Pair::reads);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void sums_differences_and_common_pairs_are_those_of_sets(long seed) {
        Random random = new Random(seed);
        for (int time = 0; time < 200; time++) {
            Set<Pair> one = some(random);
            Set<Pair> other = some(random);
            int pin = random.nextInt(64);

            Set<Pair> both = new TreeSet<>(ORDER);
            both.addAll(one);
            both.addAll(other);
            assertSame(both, Pairs.of(one).plus(Pairs.of(other)), seed);

            Set<Pair> common = copy(one);
            common.retainAll(other);
            assertSame(common, Pairs.of(one).and(Pairs.of(other)), seed);

            Set<Pair> left = copy(one);
            left.removeAll(other);
            assertSame(left, Pairs.of(one).minus(Pairs.of(other)), seed);
            assertEquals(left.isEmpty(), Pairs.of(other).containsAll(Pairs.of(one)));

            Set<Pair> away = copy(one);
            away.removeIf(pair -> pair.low() == pin || pair.reads() == pin);
            assertSame(away, Pairs.of(one).withoutPin(pin), seed);
        }
    }

    @Test
    void the_same_pairs_are_one_set_however_they_came_together() {
        Pairs at = Pairs.of(new Pair(2, 5), new Pair(63, 0));
        Pairs grown = Pairs.of(new Pair(63, 0))
                .with(new Pair(2, 5))
                .with(new Pair(62, 1))
                .without(new Pair(62, 1));
        assertEquals(at, grown);
        assertEquals(at.hashCode(), grown.hashCode());
        assertNotEquals(at.hashCode(), Pairs.of(new Pair(5, 2)).hashCode());
        assertEquals("{2→5 63→0}", at.toString());
        assertEquals(List.of(new Pair(2, 5), new Pair(63, 0)), at.list());
    }

    private static void assertSame(Set<Pair> expected, Pairs pairs, long seed) {
        assertEquals(List.copyOf(expected), pairs.list(), () -> "seed " + seed);
        assertEquals(expected.size(), pairs.count());
        assertEquals(expected.isEmpty(), pairs.isEmpty());
        assertEquals(Pairs.of(expected), pairs);
        expected.forEach(pair -> assertEquals(1, pairs.readsLow(pair.low()) >>> pair.reads() & 1));
    }

    private static Set<Pair> some(Random random) {
        int pins = 2 + random.nextInt(63);
        return IntStream.range(0, random.nextInt(3 * pins))
                .mapToObj(each -> new Pair(random.nextInt(pins), random.nextInt(pins)))
                .collect(Collectors.toCollection(() -> new TreeSet<>(ORDER)));
    }

    private static Set<Pair> copy(Set<Pair> pairs) {
        Set<Pair> copy = new TreeSet<>(ORDER);
        copy.addAll(pairs);
        return copy;
    }
}
