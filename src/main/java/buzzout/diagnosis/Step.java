package buzzout.diagnosis;

import buzzout.plan.Joint;

/** What the person can do to learn more. */
public sealed interface Step {
    /**
     * Press a key, the only one.
     *
     * @param key index into the plan's keys
     */
    record Press(int key) implements Step {}

    /** Hold the flying lead against a joint, no key down. */
    record Touch(Joint joint) implements Step {}

    /**
     * A reading with a meter, power off.
     *
     * @param where where to put the tips and what the reading would mean
     */
    record Measure(String where) implements Step {}
}
