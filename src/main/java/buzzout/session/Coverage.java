package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/** How every key stands after a session's presses. */
final class Coverage {
    private Coverage() {}

    static List<KeyState> of(Session session) {
        Plan plan = session.plan();
        Tested tested = Growing.of(session.presses()).sum(new Tested.By(plan, session.quiet()));
        Set<Integer> unsteady = session.flex().unsteady();
        Pairs unpressed = StuckPins.without(plan, session.quiet());
        boolean madeUp = plan.isMadeUp();
        List<KeyState> states = new ArrayList<>();
        for (Key key : plan.keys()) {
            if (!madeUp && unpressed.contains(Expected.pair(plan, key))) {
                states.add(KeyState.HELD);
            } else if (unsteady.contains(key.index())) {
                states.add(KeyState.INTERMITTENT);
            } else {
                states.add(tested.state(key.index(), session.everyKeyPressed()));
            }
        }
        return Collections.unmodifiableList(states);
    }

    /** A press while another key is down proves only a key that answers exactly as planned. */
    static boolean proves(Plan plan, Key key, Press press) {
        return !press.inCompany() || (!plan.isMadeUp() && Expected.isAllOf(plan, key, press.pairs()));
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
}
