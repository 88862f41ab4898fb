package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.List;

/** A session's presses and quiet check as evidence. */
final class Gathered {
    private Gathered() {}

    static Evidence from(Session session) {
        if (session.stage() == Stage.NO_PROBE
                || session.stage() == Stage.QUIET_CHECK
                || session.plan().isMadeUp()) {
            return Evidence.NONE;
        }
        Plan plan = session.plan();
        Pairs quiet = session.quiet();
        List<Observation> observations = new ArrayList<>();
        observations.add(new Observation(new Hands.Off(), quiet));
        for (Press press : session.presses()) {
            boolean proves = !press.inCompany()
                    || press.presumed().stream()
                            .anyMatch(key -> Coverage.proves(plan, plan.keys().get(key), press));
            if (proves) {
                Hands hands = press.called().isPresent()
                        ? new Hands.Meant(press.called().getAsInt())
                        : new Hands.SomeKey();
                observations.add(new Observation(hands, quiet.plus(press.pairs())));
            }
        }
        if (session.everyKeyPressed()) {
            observations.add(new Observation(new Hands.EveryKey(), quiet));
        }
        return new Evidence(observations);
    }
}
