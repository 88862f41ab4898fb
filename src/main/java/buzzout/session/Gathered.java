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
        held(session, observations);
        return new Evidence(observations);
    }

    /** What was held: a dropout is an answer of nothing, and a key that stayed meanwhile gave its own. */
    private static void held(Session session, List<Observation> observations) {
        Pairs quiet = session.quiet();
        for (List<FlexCheck.Dropout> group : session.flex().groups()) {
            FlexCheck.Pattern pattern = FlexCheck.pattern(group);
            pattern.dropped().stream()
                    .sorted()
                    .forEach(key -> observations.add(new Observation(new Hands.Flexed(key), quiet)));
            pattern.stayed().stream()
                    .sorted()
                    .forEach(key ->
                            observations.add(new Observation(new Hands.Flexed(key), quiet.plus(answer(session, key)))));
        }
        session.allAtOnce()
                .tried()
                .forEach(tried -> observations.add(
                        new Observation(new Hands.Together(tried.keys()), quiet.plus(tried.answer()))));
    }

    /** What a held key closes by itself: what it closed when it was last pressed alone, else what is planned. */
    private static Pairs answer(Session session, int key) {
        Pairs answer =
                Pairs.of(Expected.pair(session.plan(), session.plan().keys().get(key)));
        for (Press press : session.presses()) {
            if (!press.inCompany() && press.presumed().stream().anyMatch(each -> each == key)) {
                answer = press.pairs();
            }
        }
        return answer;
    }
}
