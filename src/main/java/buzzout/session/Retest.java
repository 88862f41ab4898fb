package buzzout.session;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What must be pressed again after a repair, and what came of it. */
public final class Retest {
    /** How a retest ended. */
    public enum Result {
        /** Every key of the board is good, and nothing conducts unpressed. */
        WHOLE,
        /** The keys pressed again are good; others are untested or wrong. */
        AS_PLANNED,
        /** The keys answer as they did before the repair. */
        RETURNED,
        /** Some key is not good, but not as before. */
        OTHERWISE
    }

    private Retest() {}

    /** The keys, by index, that answer differently with this fault than without: what its repair can have changed. */
    public static Set<Integer> keys(Plan plan, Fault fault) {
        return new TreeSet<>(answers(plan, fault).keySet());
    }

    /** What is to be done after repairs. */
    record Due(Set<Integer> keys, List<Press> kept) {}

    /**
     * A press no longer counts when a repair can have changed its key, or, where nobody named its key, when it closed what
     * such a key would. The keys that it was credited to are due as well.
     */
    static Due after(Plan plan, List<Fault> repairs, List<Press> presses) {
        Set<Integer> changed = new TreeSet<>();
        Pairs closed = Pairs.NONE;
        for (Fault fault : repairs) {
            Map<Integer, Reading> answers = answers(plan, fault);
            changed.addAll(answers.keySet());
            for (Reading answer : answers.values()) {
                closed = closed.plus(answer.low()).plus(answer.between());
            }
        }
        Set<Integer> due = new TreeSet<>(changed);
        List<Press> kept = new ArrayList<>();
        for (Press press : presses) {
            OptionalInt key = press.key();
            boolean mayBeOne =
                    press.called().isEmpty() && !press.pairs().and(closed).isEmpty();
            if (key.stream().anyMatch(changed::contains) || mayBeOne) {
                key.ifPresent(due::add);
            } else {
                kept.add(press);
            }
        }
        return new Due(due, kept);
    }

    /** What came of the retest; nothing before its last key was let go, or where there is none. */
    public static Optional<Result> result(Session session) {
        Optional<RollCall> call = session.rollCall()
                .filter(RollCall::isRetest)
                .filter(retest -> session.stage() == Stage.PRESSING || session.stage() == Stage.ENDED)
                .filter(retest -> session.toCall().isEmpty() && !session.isKeyDown());
        return call.map(retest -> result(session, retest));
    }

    private static Result result(Session session, RollCall retest) {
        List<KeyState> states = session.states();
        if (retest.keys().stream().allMatch(key -> states.get(key).isWell())) {
            boolean allWell = states.stream().allMatch(KeyState::isWell);
            return allWell && session.quiet().isEmpty() ? Result.WHOLE : Result.AS_PLANNED;
        }
        return retest.repaired().stream().anyMatch(fault -> isBack(session, retest, fault))
                ? Result.RETURNED
                : Result.OTHERWISE;
    }

    /** Whether every key that a fault changes answers as it would with that fault. */
    private static boolean isBack(Session session, RollCall retest, Fault fault) {
        Map<Integer, Reading> answers = answers(session.plan(), fault);
        Named seen = Growing.of(session.presses()).sum(new Named.Since(retest.sinceMillis()));
        return !answers.isEmpty()
                && answers.entrySet().stream()
                        .allMatch(answer -> answer.getValue().agreesWith(seen.closedBy(answer.getKey())));
    }

    /** What the keys answer, beyond what conducts without a press, that answer differently with a fault than without. */
    private static Map<Integer, Reading> answers(Plan plan, Fault fault) {
        Circuit sound = Circuit.of(plan);
        Circuit faulty = Circuit.of(plan, List.of(fault));
        Map<Integer, Reading> answers = new TreeMap<>();
        for (Key key : plan.keys()) {
            Reading answer = beyondQuiet(faulty, key);
            if (!answer.equals(beyondQuiet(sound, key))) {
                answers.put(key.index(), answer);
            }
        }
        return answers;
    }

    private static Reading beyondQuiet(Circuit circuit, Key key) {
        Reading quiet = circuit.quiet();
        Reading pressed = circuit.pressed(key);
        return new Reading(pressed.low().minus(quiet.low()), pressed.between().minus(quiet.between()));
    }
}
