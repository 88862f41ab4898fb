package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;

/** What a key should close on a faultless board. */
final class Expected {
    private Expected() {}

    /** Current flows towards the net that the stripes face, so that net's pin is the one driven low. */
    static Pair pair(Plan plan, Key key) {
        return plan.stripe() == NetKind.ROW ? new Pair(key.row(), key.column()) : new Pair(key.column(), key.row());
    }

    /** Whether exactly that was closed. */
    static boolean isAllOf(Plan plan, Key key, Pairs closed) {
        return closed.equals(Pairs.of(pair(plan, key)));
    }
}
