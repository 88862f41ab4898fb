package buzzout.session;

import buzzout.circuit.Pairs;
import java.util.OptionalInt;

/**
 * One press as the probe saw it; it grows while its pairs bounce and settle.
 *
 * @param atMillis when it began, session time
 * @param micros when its first pair closed, probe time
 * @param lastMicros when a pair of it last closed or opened, probe time
 * @param pairs what it closed beyond what conducted before; none where the person says that nothing came
 * @param presumed the key that it most likely was, where there is one
 * @param called the key that was meant, where the program or the person named it
 * @param inCompany whether another key was down when it began, so that it proves less
 */
public record Press(
        long atMillis,
        long micros,
        long lastMicros,
        Pairs pairs,
        OptionalInt presumed,
        OptionalInt called,
        boolean inCompany) {
    /** The same press with what it closed so far, the last change at this time. */
    Press with(long changedMicros, Pairs closed) {
        return new Press(atMillis, micros, changedMicros, closed, presumed, called, inCompany);
    }

    /** The key to credit: the one that was meant, else the presumed one. */
    public OptionalInt key() {
        return called.isPresent() ? called : presumed;
    }
}
