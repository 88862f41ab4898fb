package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Joint;
import java.util.Optional;

/**
 * One touch of the flying lead as the probe saw it; it grows while the tip scrapes and settles.
 *
 * @param atMillis when it began, session time
 * @param lastMicros when a pair of it last closed or opened, probe time
 * @param pairs what conducted with the spare pin; none where the person says that the lead met nothing
 * @param unpressed those that came while no key was down, which say where the joint is
 * @param called the joint that was asked for
 */
public record Touch(long atMillis, long lastMicros, Pairs pairs, Pairs unpressed, Optional<Joint> called) {
    Touch lasting(long micros) {
        return new Touch(atMillis, micros, pairs, unpressed, called);
    }

    Touch grown(long micros, Pairs more, boolean keyDown) {
        return new Touch(atMillis, micros, pairs.plus(more), keyDown ? unpressed : unpressed.plus(more), called);
    }
}
