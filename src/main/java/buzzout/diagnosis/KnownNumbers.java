package buzzout.diagnosis;

import buzzout.circuit.Across;
import java.util.Arrays;
import java.util.function.ToIntFunction;

/** Remembers the numbers of answers; a new one takes the place of what shares its slot. */
final class KnownNumbers {
    private static final int SLOTS = 1 << 12;
    private static final int NONE = -1;

    private final Across[] asked = new Across[SLOTS];
    private final int[] numbers = new int[SLOTS];

    KnownNumbers() {
        Arrays.fill(numbers, NONE);
        Arrays.fill(asked, Across.NOTHING);
    }

    int number(Across across, ToIntFunction<Across> of) {
        int hash = across.hashCode();
        int slot = (hash ^ hash >>> 16) & SLOTS - 1;
        if (numbers[slot] == NONE || !asked[slot].equals(across)) {
            asked[slot] = across;
            numbers[slot] = of.applyAsInt(across);
        }
        return numbers[slot];
    }
}
