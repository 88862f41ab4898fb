package buzzout.diagnosis;

import buzzout.plan.Plan;
import buzzout.session.Evidence;

/** Weighs evidence against the circuit model. */
public final class Engine {
    public Engine(Plan plan) {}

    /** What is wrong, after this evidence. Fast when it only grew since the last call. */
    public Diagnosis weigh(Evidence evidence) {
        return Diagnosis.NOTHING_YET;
    }
}
