package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

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
        // A key that chatters for hours is observed in a few ways, however often.
        Map<List<Object>, Observation> known = new HashMap<>();
        for (Press press : session.presses()) {
            OptionalInt fallen = StuckPins.fallen(plan, quiet, press.pairs());
            if (fallen.isPresent()) {
                observations.add(observation(known, new Hands.NetFell(fallen.getAsInt()), quiet, press.pairs()));
            } else if (!Coverage.isUnproven(plan, press) && !isMadeGood(plan, session.presses(), press)) {
                observations.add(observation(known, hands(press), quiet, press.pairs()));
                if (press.read() && !press.isGap() && !isAsPlanned(plan, press)) {
                    // Whether it is that key's or, by a slip, a neighbour's: some key of the board gives it.
                    observations.add(observation(known, new Hands.SomeKey(), quiet, press.pairs()));
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
        held(session, known, observations);
        return new Evidence(observations);
    }

    private static Observation observation(
            Map<List<Object>, Observation> known, Hands hands, Pairs quiet, Pairs closed) {
        return known.computeIfAbsent(List.of(hands, closed), any -> new Observation(hands, quiet.plus(closed)));
    }

    /** What was held: a dropout is an answer of nothing, and a key that stayed meanwhile gave its own. */
    private static void held(Session session, Map<List<Object>, Observation> known, List<Observation> observations) {
        Pairs quiet = session.quiet();
        List<List<FlexCheck.Dropout>> groups = session.flex().groups();
        List<Pairs> answers = groups.isEmpty() ? List.of() : answers(session);
        for (List<FlexCheck.Dropout> group : groups) {
            FlexCheck.Pattern pattern = FlexCheck.pattern(group);
            pattern.dropped().stream()
                    .sorted()
                    .forEach(key -> observations.add(observation(known, new Hands.Flexed(key), quiet, Pairs.NONE)));
            pattern.stayed().stream()
                    .sorted()
                    .forEach(key ->
                            observations.add(observation(known, new Hands.Flexed(key), quiet, answers.get(key))));
        }
        session.allAtOnce()
                .tried()
                .forEach(tried -> observations.add(
                        new Observation(new Hands.Together(tried.keys()), quiet.plus(tried.answer()))));
    }

    /** What each key, held, closes by itself: what it closed when it was last pressed alone, else what is planned. */
    private static List<Pairs> answers(Session session) {
        List<Pairs> answers = new ArrayList<>();
        session.plan().keys().forEach(key -> answers.add(Pairs.of(Expected.pair(session.plan(), key))));
        for (Press press : session.presses()) {
            if (!press.inCompany()) {
                press.presumed().ifPresent(key -> answers.set(key, press.pairs()));
            }
        }
        return answers;
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
