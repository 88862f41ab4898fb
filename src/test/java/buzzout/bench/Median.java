package buzzout.bench;

import java.util.Arrays;

/** The value in the middle, the higher of two. */
final class Median {
    private Median() {}

    static double of(double[] values) {
        return Arrays.stream(values).sorted().toArray()[values.length / 2];
    }
}
