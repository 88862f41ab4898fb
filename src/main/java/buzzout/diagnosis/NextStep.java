package buzzout.diagnosis;

/**
 * A step and its reason.
 *
 * @param does what to do, an imperative
 * @param tells what its outcomes would mean, the end of a sentence
 * @param effort expected until every finding is certain, if this is done first; in presses of a key
 */
public record NextStep(Step step, String does, String tells, double effort) {
    /** All in one line. */
    public String says() {
        return does + ": " + tells;
    }
}
