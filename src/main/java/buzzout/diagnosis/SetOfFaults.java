package buzzout.diagnosis;

import java.util.Arrays;
import java.util.BitSet;

/** Numbers of faults as a key: the hash of a bit set is the same for many sets of few bits. */
final class SetOfFaults {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final long[] words;
    private final int hash;

    SetOfFaults(BitSet numbers) {
        this(numbers.toLongArray());
    }

    /** These and one more. */
    SetOfFaults(BitSet numbers, int more) {
        this(added(numbers.toLongArray(), more));
    }

    private SetOfFaults(long[] numbers) {
        words = numbers;
        long mixed = words.length;
        for (long word : words) {
            mixed = Long.rotateLeft((mixed ^ word) * GOLDEN, 29);
        }
        hash = Long.hashCode(mixed * GOLDEN);
    }

    private static long[] added(long[] words, int more) {
        int place = more / Long.SIZE;
        long[] all = place < words.length ? words : Arrays.copyOf(words, place + 1);
        all[place] |= 1L << more;
        return all;
    }

    static BitSet with(BitSet faults, int more) {
        BitSet all = (BitSet) faults.clone();
        all.set(more);
        return all;
    }

    static BitSet without(BitSet faults, int gone) {
        BitSet left = (BitSet) faults.clone();
        left.clear(gone);
        return left;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SetOfFaults set && Arrays.equals(words, set.words);
    }

    @Override
    public int hashCode() {
        return hash;
    }
}
