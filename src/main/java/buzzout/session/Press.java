package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import java.util.OptionalInt;

/**
 * One press as the probe saw it; it grows while its pairs bounce and settle.
 *
 * @param atMillis when it began, session time
 * @param contact when its pairs closed and opened, probe time
 * @param pairs what it closed beyond what conducted before; none where the person says that nothing came, or where
 *     nothing came at a key's turn in a read-through
 * @param presumed the key that it most likely was, where there is one
 * @param called the key that was meant, where the program or the person named it
 * @param inCompany whether another key was down when it began, so that it proves less
 * @param read whether the presumed key is known by its turn in a read-through
 */
public record Press(
        long atMillis,
        Contact contact,
        Pairs pairs,
        OptionalInt presumed,
        OptionalInt called,
        boolean inCompany,
        boolean read) {
    /** A press whose contact closed at {@code micros}, last changed at {@code lastMicros}, and did not bounce. */
    public Press(
            long atMillis,
            long micros,
            long lastMicros,
            Pairs pairs,
            OptionalInt presumed,
            OptionalInt called,
            boolean inCompany) {
        this(atMillis, Contact.still(micros, lastMicros), pairs, presumed, called, inCompany, false);
    }

    /** A key's turn in a read-through, at which nothing came. */
    static Press nothingRead(long atMillis, int key) {
        return new Press(atMillis, 0, Long.MIN_VALUE, Pairs.NONE, OptionalInt.of(key), OptionalInt.empty(), false)
                .readAs(key);
    }

    /** The same press, known to be this key's by its turn in a read-through. */
    Press readAs(int key) {
        return new Press(atMillis, contact, pairs, OptionalInt.of(key), called, inCompany, true);
    }

    /** Whether nothing came at a key's turn in a read-through: it may have been left out as well. */
    boolean isGap() {
        return read && pairs.isEmpty();
    }

    /** When its first pair closed, probe time. */
    public long micros() {
        return contact.closed();
    }

    /** When a pair of it last closed or opened, probe time. */
    public long lastMicros() {
        return contact.last();
    }

    /** The same press with what it closed so far. */
    Press with(Contact changed, Pairs closed) {
        return new Press(atMillis, changed, closed, presumed, called, inCompany, read);
    }

    Press with(Contact changed) {
        return new Press(atMillis, changed, pairs, presumed, called, inCompany, read);
    }

    /** Whether exactly what its key should close was closed. */
    public boolean isAsPlanned(Plan plan) {
        return presumed.isPresent()
                && presumed.equals(key())
                && Expected.isAllOf(plan, plan.keys().get(presumed.getAsInt()), pairs);
    }

    /** The key to credit: the one that was meant, else the presumed one. */
    public OptionalInt key() {
        return called.isPresent() ? called : presumed;
    }
}
