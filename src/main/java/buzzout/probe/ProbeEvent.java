package buzzout.probe;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;

/** What comes from a probe once its lines are understood. Pins are indices into the plan's pins. */
public sealed interface ProbeEvent {
    /** The probe answered on this port and took the plan's pins. */
    record Found(Identity identity, String port) implements ProbeEvent {}

    /** All pairs that conduct now: at the start, and again whenever changes may have been lost. */
    record WholeState(long micros, Pairs pairs) implements ProbeEvent {}

    /**
     * A pair closed.
     *
     * @param micros when the probe saw it, in microseconds since it began to sweep; never wraps
     */
    record Closed(long micros, Pair pair) implements ProbeEvent {}

    /** A pair opened; times as in {@link Closed}. */
    record Opened(long micros, Pair pair) implements ProbeEvent {}

    /** So many changes never arrived; a {@link WholeState} follows. */
    record Lost(long changes) implements ProbeEvent {}

    /** So many lines were not understood; {@code sample} is one of them, made printable. */
    record Garbled(long lines, String sample) implements ProbeEvent {}

    /** The link is down; {@code why} is a sentence for the person. */
    record LinkLost(String why) implements ProbeEvent {}

    /** The probe refused what it was told, such as a pin that it cannot offer; a sentence for the person. */
    record Refused(String why) implements ProbeEvent {}
}
