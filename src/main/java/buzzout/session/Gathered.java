package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Key;
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
            if (!Coverage.isUnproven(plan, press) && !isMadeGood(plan, session.presses(), press)) {
                observations.add(new Observation(hands(press), quiet.plus(press.pairs())));
                if (press.read() && !press.isGap() && !isAsPlanned(plan, press)) {
                    // Whether it is that key's or, by a slip, a neighbour's: some key of the board gives it.
                    observations.add(new Observation(new Hands.SomeKey(), quiet.plus(press.pairs())));
                }
            }
        }
        for (Touch touch : session.lead().touches()) {
            touch.called()
                    .ifPresent(joint -> observations.add(new Observation(
                            new Hands.Touch(joint.net(plan), joint.place(plan)), quiet.plus(touch.unpressed()))));
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

    private static Hands hands(Press press) {
        if (press.called().isPresent()) {
            return new Hands.Meant(press.called().getAsInt());
        }
        return press.read() ? new Hands.Read(press.presumed().orElseThrow()) : new Hands.SomeKey();
    }

    /**
     * Whether a key that gave nothing, or another's answer, at its turn in a read-through has answered as planned since:
     * that had been a slip.
     */
    private static boolean isMadeGood(Plan plan, List<Press> presses, Press turn) {
        return turn.read()
                && !isAsPlanned(plan, turn)
                && presses.stream()
                        .filter(other -> !other.read() && (turn.isGap() || other.atMillis() > turn.atMillis()))
                        .anyMatch(other -> other.key().equals(turn.presumed()) && isAsPlanned(plan, other));
    }

    private static boolean isAsPlanned(Plan plan, Press press) {
        Key key = plan.keys().get(press.key().orElseThrow());
        return press.pairs().equals(Pairs.of(Expected.pair(plan, key)));
    }
}
