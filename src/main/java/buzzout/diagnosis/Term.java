package buzzout.diagnosis;

/** One part of the evidence that a hypothesis must answer for. */
sealed interface Term {
    /** What conducts without a press. */
    record Quiet() implements Term {}

    /** The presses in which this key was meant. */
    record OfKey(int key) implements Term {}

    /** What came of this trial, by its place among all that were made. */
    record OfTrial(int trial) implements Term {}

    /** The presses that gave this answer, and the keys that would give it. */
    record OfAnswer(int answer) implements Term {}
}
