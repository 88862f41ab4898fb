package buzzout.session;

import buzzout.circuit.Pairs;
import java.util.OptionalInt;

/**
 * One press as the probe saw it; it grows while its pairs bounce and settle.
 *
 * @param atMillis when it began, session time
 * @param micros when its first pair closed, probe time
 * @param lastMicros when a pair of it last closed or opened, probe time
 * @param pairs what it closed beyond what conducted before; none where the person says that nothing came, or where
 *     nothing came at a key's turn in a read-through
 * @param presumed the key that it most likely was, where there is one
 * @param called the key that was meant, where the program or the person named it
 * @param inCompany whether another key was down when it began, so that it proves less
 * @param read whether the presumed key is known by its turn in a read-through
 */
public record Press(
        long atMillis,
        long micros,
        long lastMicros,
        Pairs pairs,
        OptionalInt presumed,
        OptionalInt called,
        boolean inCompany,
        boolean read) {
    /** One whose key is called, or presumed by what it closed. */
    public Press(
            long atMillis,
            long micros,
            long lastMicros,
            Pairs pairs,
            OptionalInt presumed,
            OptionalInt called,
            boolean inCompany) {
        this(atMillis, micros, lastMicros, pairs, presumed, called, inCompany, false);
    }

    /** A key's turn in a read-through, at which nothing came. */
    static Press nothingRead(long atMillis, int key) {
        return new Press(
                atMillis, 0, Long.MIN_VALUE, Pairs.NONE, OptionalInt.of(key), OptionalInt.empty(), false, true);
    }

    /** The same press, known to be this key's by its turn in a read-through. */
    Press readAs(int key) {
        return new Press(atMillis, micros, lastMicros, pairs, OptionalInt.of(key), called, inCompany, true);
    }

    /** Whether nothing came at a key's turn in a read-through: it may have been left out as well. */
    boolean isGap() {
        return read && pairs.isEmpty();
    }

    /** The same press with what it closed so far, the last change at this time. */
    Press with(long changedMicros, Pairs closed) {
        return new Press(atMillis, micros, changedMicros, closed, presumed, called, inCompany, read);
    }

    /** The key to credit: the one that was meant, else the presumed one. */
    public OptionalInt key() {
        return called.isPresent() ? called : presumed;
    }
}
