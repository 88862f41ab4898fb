package buzzout.diagnosis;

/**
 * A step and its reason.
 *
 * @param says what to do and what it would tell, the end of a sentence
 * @param effort expected until every finding is certain, if this is done first; in presses of a key
 */
public record NextStep(Step step, String says, double effort) {}
