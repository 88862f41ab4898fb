package buzzout.diagnosis;

import java.util.Arrays;
import java.util.BitSet;

/** How often each numbered reading counts; grows as numbers do. */
final class Counts {
    private int[] counts = new int[64];

    int of(int number) {
        return number < counts.length ? counts[number] : 0;
    }

    /** The numbers that count at all. */
    BitSet present() {
        BitSet present = new BitSet();
        for (int number = 0; number < counts.length; number++) {
            present.set(number, counts[number] > 0);
        }
        return present;
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
