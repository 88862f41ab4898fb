package buzzout.probe;

import buzzout.circuit.Pair;

/**
 * What a probe says in one line. Sequence numbers count from 1 at each {@code go} and, like micros, run modulo 2^32.
 */
sealed interface ProbeMessage {
    /** The version of the protocol that this program speaks. */
    int PROTOCOL = 1;

    /** {@code iam 1 0.1.0 ATmega32U4 40 16000000}: who it is, when asked and at its start. */
    record Iam(Identity identity) implements ProbeMessage {}

    /** {@code iam 2 ...}: it speaks another version, whose other fields mean nothing here. */
    record OtherProtocol(int protocol) implements ProbeMessage {}

    /** {@code ok go 16}: it did as told. */
    record Ok(String answer) implements ProbeMessage {}

    /** {@code no add pin F9}: it did not; {@code detail} is empty where none came. */
    record No(String verb, String reason, String detail) implements ProbeMessage {}

    /** {@code + 12 345678 3 5} or {@code - ...}: a pair closed or opened. */
    record Change(long sequence, long micros, boolean closed, Pair pair) implements ProbeMessage {}

    /** {@code = 3 5}: a pair that conducts, in a whole state. */
    record Conducts(Pair pair) implements ProbeMessage {}

    /** {@code full 12 345678 2}: a whole state ends; it holds so many pairs and all changes up to this number. */
    record Full(long sequence, long micros, int pairs) implements ProbeMessage {}

    /** {@code beat 12 345678 900 2}: it still sweeps; the last change's number, sweeps since {@code go}, pairs closed. */
    record Beat(long sequence, long micros, long sweeps, int pairs) implements ProbeMessage {}

    /** {@code lost 12 3}: so many changes up to this number found no room; a whole state follows. */
    record Lost(long sequence, long changes) implements ProbeMessage {}

    /** A verb that this version does not know, as a newer probe may send. */
    record Unknown(String body) implements ProbeMessage {}

    /** A known verb whose fields make no sense. */
    record Malformed(String body) implements ProbeMessage {}
}
