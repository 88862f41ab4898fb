package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** How every key stands after a session's presses. */
final class Coverage {
    private Coverage() {}

    static List<KeyState> of(Session session) {
        Plan plan = session.plan();
        List<List<KeyState>> answers = new ArrayList<>();
        plan.keys().forEach(key -> answers.add(new ArrayList<>()));
        BitSet gaps = new BitSet();
        for (Press press : session.presses()) {
            if (press.isGap()) {
                press.presumed().ifPresent(gaps::set);
                continue;
            }
            if (StuckPins.fallen(plan, session.quiet(), press.pairs()).isPresent()) {
                continue;
            }
            OptionalInt pressed = plan.isMadeUp() ? press.called() : press.key();
            pressed.ifPresent(index -> {
                Key key = plan.keys().get(index);
                if (proves(plan, key, press)) {
                    answers.get(index).add(answer(plan, key, press));
                }
            });
        }
        Set<Integer> unsteady = session.flex().unsteady();
        Pairs unpressed = StuckPins.without(plan, session.quiet());
        return plan.keys().stream()
                .map(key -> !plan.isMadeUp() && unpressed.contains(Expected.pair(plan, key))
                        ? KeyState.HELD
                        : unsteady.contains(key.index())
                                ? KeyState.INTERMITTENT
                                : summed(answers.get(key.index()), session.everyKeyPressed() || gaps.get(key.index())))
                .toList();
    }

    /** A press while another key is down proves only a key that answers exactly as planned. */
    static boolean proves(Plan plan, Key key, Press press) {
        return !press.inCompany() || (!plan.isMadeUp() && press.pairs().equals(Pairs.of(Expected.pair(plan, key))));
    }

    /** A press that proves nothing, although it may have been any key's. */
    static boolean isUnproven(Plan plan, Press press) {
        return press.inCompany()
                && press.presumed().stream()
                        .noneMatch(key -> proves(plan, plan.keys().get(key), press));
    }

    /** What one press says of a key. */
    static KeyState answer(Plan plan, Key key, Press press) {
        Pairs pairs = press.pairs();
        if (plan.isMadeUp()) {
            return unplanned(press);
        }
        Pair planned = Expected.pair(plan, key);
        boolean right = pairs.contains(planned);
        boolean turned = pairs.contains(planned.turned());
        boolean company = !pairs.without(planned).without(planned.turned()).isEmpty();
        if (pairs.isEmpty()) {
            return KeyState.SILENT;
        }
        if (company) {
            return right || turned ? KeyState.DOUBLED : KeyState.MISPLACED;
        }
        return right ? turned ? KeyState.TWO_WAY : KeyState.GOOD : KeyState.REVERSED;
    }

    /** A press of a key whose row and column are not known yet: any two pins are right. */
    private static KeyState unplanned(Press press) {
        List<Pair> pairs = press.pairs().list();
        return switch (pairs.size()) {
            case 0 -> KeyState.SILENT;
            case 1 -> KeyState.GOOD;
            case 2 -> pairs.get(0).turned().equals(pairs.get(1)) ? KeyState.TWO_WAY : KeyState.DOUBLED;
            default -> KeyState.DOUBLED;
        };
    }

    private static KeyState summed(List<KeyState> answers, boolean hadItsTurn) {
        if (answers.isEmpty()) {
            return hadItsTurn ? KeyState.SILENT : KeyState.UNTESTED;
        }
        Set<KeyState> all = EnumSet.copyOf(answers);
        return all.contains(KeyState.GOOD) && all.contains(KeyState.SILENT)
                ? KeyState.INTERMITTENT
                : answers.get(answers.size() - 1);
    }
}
