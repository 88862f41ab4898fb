package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;

/** Which keys lie near enough for solder or a wire to stray from one to the other. */
final class Neighbours {
    private Neighbours() {}

    /** The distance between two keys' middles, in key pitches. */
    static double apart(Key key, Key other) {
        return Math.hypot(
                key.place().middle() - other.place().middle(),
                key.place().y() - other.place().y());
    }

    /**
     * Whether {@code other} is, among the keys of its net, the one nearest to {@code key}, and the two nets follow each
     * other in the plan.
     */
    static boolean areSideBySide(Plan plan, NetKind kind, Key key, Key other) {
        int net = other.net(kind);
        if (Math.abs(net - key.net(kind)) != 1) {
            return false;
        }
        return plan.nets().get(net).joints().stream()
                .map(plan.keys()::get)
                .allMatch(each -> apart(key, each) >= apart(key, other) - 1e-9);
    }
}
