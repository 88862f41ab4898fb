package buzzout.diagnosis;

import buzzout.circuit.Pairs;

/** One piece of evidence that a hypothesis must answer for. */
sealed interface Atom {
    /** What conducts without a press. */
    record Quiet() implements Atom {}

    /** This key was pressed; the how-manieth such press of the session. */
    record Meant(int key, Pairs answer, int number) implements Atom {}

    /** This answer came from some key. */
    record Free(Pairs answer) implements Atom {}

    /** This key was pressed at some time, as every key was. */
    record Covered(int key) implements Atom {}
}
