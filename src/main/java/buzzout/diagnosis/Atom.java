package buzzout.diagnosis;

/** One piece of evidence that a hypothesis must answer for. Answers are numbers of readings. */
sealed interface Atom {
    /** What conducts without a press. */
    record Quiet() implements Atom {}

    /** This key was pressed; {@code number} counts such presses. */
    record Meant(int key, int answer, int number) implements Atom {}

    /** This answer came from some key. */
    record Free(int answer) implements Atom {}

    /** This key was pressed at some time, as every key was. */
    record Covered(int key) implements Atom {}
}
