package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;

/** Which keys lie near enough for solder or a wire to stray from one to the other. */
final class Neighbours {
    private Neighbours() {}

    /** The distance between two keys' middles, in key pitches. */
    static double apart(Key key, Key other) {
        double across = key.place().middle() - other.place().middle();
        double down = key.place().y() - other.place().y();
        return Math.sqrt(across * across + down * down);
    }

    /** Whether {@code other} is, among the keys of its net, the one nearest to {@code key}. */
    static boolean isNearest(Plan plan, NetKind kind, Key key, Key other) {
        double apart = apart(key, other);
        for (int each : plan.nets().get(other.net(kind)).joints()) {
            if (apart(key, plan.keys().get(each)) < apart - 1e-9) {
                return false;
            }
        }
        return true;
    }
}
