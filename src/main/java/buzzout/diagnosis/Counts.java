package buzzout.diagnosis;

import java.util.Arrays;

/** How often each numbered reading counts; grows as numbers do. */
final class Counts {
    private int[] counts = new int[64];

    int of(int number) {
        return number < counts.length ? counts[number] : 0;
    }

    void add(int number, int more) {
        if (number >= counts.length) {
            counts = Arrays.copyOf(counts, Math.max(number + 1, 2 * counts.length));
        }
        counts[number] += more;
    }

    void clear() {
        Arrays.fill(counts, 0);
    }
}
