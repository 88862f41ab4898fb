package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import buzzout.session.Observation.Hands;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
        Map<Observation, Integer> times = new LinkedHashMap<>();
        add(times, new Observation(new Hands.Off(), quiet));
        Observed observed = Growing.of(session.presses()).sum(new Observed.By(plan, quiet));
        observed.times().forEach((observation, often) -> times.merge(observation, often, Integer::sum));
        for (Touch touch : session.lead().touches()) {
            touch.called()
                    .ifPresent(joint -> add(
                            times,
                            new Observation(
                                    new Hands.Touch(joint.net(plan), joint.place(plan)),
                                    quiet.plus(touch.unpressed()))));
        }
        if (session.everyKeyPressed()) {
            add(times, new Observation(new Hands.EveryKey(), quiet));
        }
        held(session, observed, times);
        return new Evidence(times);
    }

    private static void add(Map<Observation, Integer> times, Observation observation) {
        times.merge(observation, 1, Integer::sum);
    }

    /** What was held: a dropout is an answer of nothing, and a key that stayed meanwhile gave its own. */
    private static void held(Session session, Observed observed, Map<Observation, Integer> times) {
        Pairs quiet = session.quiet();
        for (List<FlexCheck.Dropout> group : session.flex().groups()) {
            FlexCheck.Pattern pattern = FlexCheck.pattern(group);
            pattern.dropped().stream()
                    .sorted()
                    .forEach(key -> add(times, new Observation(new Hands.Flexed(key), quiet)));
            pattern.stayed().stream()
                    .sorted()
                    .forEach(key ->
                            add(times, new Observation(new Hands.Flexed(key), quiet.plus(observed.closedBy(key)))));
        }
        session.allAtOnce()
                .tried()
                .forEach(tried ->
                        add(times, new Observation(new Hands.Together(tried.keys()), quiet.plus(tried.answer()))));
    }
}
