package buzzout.cli;

import buzzout.diagnosis.NextStep;
import buzzout.diagnosis.Step;
import buzzout.plan.Joint;
import buzzout.screen.Snapshot;
import java.util.List;
import java.util.Optional;

/** Which joint the program asks for: one when the person wants it, then the next as long as a touch is the best step. */
final class TouchCalls {
    private boolean following;

    /** The person is ready: the touch that tells most, if any touch tells something. */
    synchronized Optional<Joint> wanted(Snapshot now) {
        Optional<Joint> first = now.diagnosis().next().stream()
                .map(NextStep::step)
                .filter(Step.Touch.class::isInstance)
                .map(step -> ((Step.Touch) step).joint())
                .findFirst();
        following = first.isPresent();
        return first;
    }

    synchronized void stop() {
        following = false;
    }

    /** After the evidence was weighed: the next joint, once the last is answered and the lead is lifted. */
    synchronized Optional<Joint> afterWeighing(Snapshot now) {
        boolean waits = now.session().lead().called().isPresent()
                || !now.session().lead().now().isEmpty();
        if (!following || waits) {
            return Optional.empty();
        }
        List<NextStep> next = now.diagnosis().next();
        if (!next.isEmpty() && next.get(0).step() instanceof Step.Touch touch) {
            return Optional.of(touch.joint());
        }
        following = false;
        return Optional.empty();
    }
}
