package buzzout.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;

/** A set of pairs over at most 64 pins. Immutable. */
public final class Pairs {
    public static final Pairs NONE = new Pairs(new long[0]);

    /** At most 64 times 63. */
    private static final Map<Pair, Pairs> SINGLE = new ConcurrentHashMap<>();

    /** The pins that read low, as a bit set, for each driven pin; no trailing zero words. */
    private final long[] readsLow;

    private Pairs(long[] readsLow) {
        int length = readsLow.length;
        while (length > 0 && readsLow[length - 1] == 0) {
            length--;
        }
        this.readsLow = length == readsLow.length ? readsLow : Arrays.copyOf(readsLow, length);
    }

    /** The pairs of a sweep: one word for each driven pin, bit b set where pin b reads low. */
    public static Pairs ofSweep(long[] readsLow) {
        return takingOver(readsLow.clone());
    }

    /** The same of an array that must not be changed any more. */
    static Pairs takingOver(long[] readsLow) {
        Pairs pairs = new Pairs(readsLow);
        return pairs.isEmpty() ? NONE : pairs;
    }

    public static Pairs of(Pair... pairs) {
        return of(Arrays.asList(pairs));
    }

    /** What one pair makes; a session holds many presses that close the same. */
    public static Pairs of(Pair pair) {
        return SINGLE.computeIfAbsent(pair, each -> of(List.of(each)));
    }

    public static Pairs of(Iterable<Pair> pairs) {
        long[] words = new long[Long.SIZE];
        for (Pair pair : pairs) {
            words[pair.low()] |= 1L << pair.reads();
        }
        return new Pairs(words);
    }

    /** Each of some pins that reads low while any of others is driven; both are bit sets. */
    static Pairs across(long driven, long reading) {
        if (driven == 0 || reading == 0) {
            return NONE;
        }
        long[] words = new long[Long.SIZE - Long.numberOfLeadingZeros(driven)];
        for (long left = driven; left != 0; left &= left - 1) {
            words[Long.numberOfTrailingZeros(left)] = reading;
        }
        return new Pairs(words);
    }

    /** The pins that read low while {@code low} is driven, as a bit set. */
    public long readsLow(int low) {
        return low < readsLow.length ? readsLow[low] : 0;
    }

    public boolean contains(Pair pair) {
        return contains(pair.low(), pair.reads());
    }

    /** The same of a pair by its pins. */
    public boolean contains(int low, int reads) {
        return (readsLow(low) >>> reads & 1) != 0;
    }

    public boolean containsAll(Pairs others) {
        for (int low = 0; low < others.readsLow.length; low++) {
            if ((others.readsLow[low] & ~readsLow(low)) != 0) {
                return false;
            }
        }
        return true;
    }

    public Pairs with(Pair pair) {
        return contains(pair) ? this : plus(of(pair));
    }

    public Pairs without(Pair pair) {
        return minus(of(pair));
    }

    /** Those that a condition holds of. */
    public Pairs where(Predicate<Pair> condition) {
        long[] words = new long[readsLow.length];
        for (Pair pair : list()) {
            words[pair.low()] |= condition.test(pair) ? 1L << pair.reads() : 0;
        }
        return takingOver(words);
    }

    public Pairs plus(Pairs others) {
        if (isEmpty() || others.isEmpty()) {
            return isEmpty() ? others : this;
        }
        long[] words = Arrays.copyOf(readsLow, Math.max(readsLow.length, others.readsLow.length));
        for (int low = 0; low < others.readsLow.length; low++) {
            words[low] |= others.readsLow[low];
        }
        return new Pairs(words);
    }

    public Pairs minus(Pairs others) {
        if (isEmpty() || others.isEmpty()) {
            return this;
        }
        long[] words = readsLow.clone();
        for (int low = 0; low < Math.min(words.length, others.readsLow.length); low++) {
            words[low] &= ~others.readsLow[low];
        }
        return new Pairs(words);
    }

    public Pairs and(Pairs others) {
        long[] words = Arrays.copyOf(readsLow, Math.min(readsLow.length, others.readsLow.length));
        for (int low = 0; low < words.length; low++) {
            words[low] &= others.readsLow[low];
        }
        return new Pairs(words);
    }

    /** Those that no end of is this pin. */
    public Pairs withoutPin(int pin) {
        if (!hasPin(pin)) {
            return this;
        }
        long[] words = readsLow.clone();
        for (int low = 0; low < words.length; low++) {
            words[low] = low == pin ? 0 : words[low] & ~(1L << pin);
        }
        return new Pairs(words);
    }

    private boolean hasPin(int pin) {
        long readsPin = 0;
        for (long word : readsLow) {
            readsPin |= word;
        }
        return (readsPin >>> pin & 1) != 0 || readsLow(pin) != 0;
    }

    public boolean isEmpty() {
        return readsLow.length == 0;
    }

    public int count() {
        int count = 0;
        for (long word : readsLow) {
            count += Long.bitCount(word);
        }
        return count;
    }

    /** In the order of the driven pin, then of the reading pin. */
    public List<Pair> list() {
        List<Pair> pairs = new ArrayList<>();
        for (int low = 0; low < readsLow.length; low++) {
            for (long word = readsLow[low]; word != 0; word &= word - 1) {
                pairs.add(new Pair(low, Long.numberOfTrailingZeros(word)));
            }
        }
        return pairs;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Pairs pairs && Arrays.equals(readsLow, pairs.readsLow);
    }

    @Override
    public int hashCode() {
        // A sum alone would be the same for many sets of few bits.
        long mixed = readsLow.length;
        for (long word : readsLow) {
            mixed = Long.rotateLeft((mixed ^ word) * 0x9E3779B97F4A7C15L, 29);
        }
        return Long.hashCode(mixed);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("{");
        for (Pair pair : list()) {
            text.append(text.length() > 1 ? " " : "")
                    .append(pair.low())
                    .append("→")
                    .append(pair.reads());
        }
        return text.append('}').toString();
    }
}
