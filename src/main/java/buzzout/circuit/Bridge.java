package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.plan.SolderSide;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Two nets touch at two joints that lie side by side.
 *
 * @param net the net of the first joint
 * @param key the key of the first joint
 * @param otherNet the net that it should not meet
 * @param otherKey the key of the second joint; the same key where a row meets its own column
 */
public record Bridge(int net, int key, int otherNet, int otherKey) implements Fault {
    /** Joints further apart than this, in key pitches, do not come into contact. */
    private static final double REACH = 1.6;

    static List<Fault> betweenNeighbours(Plan plan) {
        List<Fault> bridges = new ArrayList<>();
        for (NetKind kind : NetKind.values()) {
            addBetweenNeighbours(bridges, plan, kind);
        }
        return bridges;
    }

    private static void addBetweenNeighbours(List<Fault> bridges, Plan plan, NetKind kind) {
        for (Key key : plan.keys()) {
            for (Key other : plan.keys()) {
                if (other.net(kind) == key.net(kind) + 1
                        && Neighbours.apart(key, other) <= REACH
                        && Neighbours.isNearest(plan, kind, key, other)) {
                    bridges.add(new Bridge(key.net(kind), key.index(), other.net(kind), other.index()));
                }
            }
        }
    }

    static List<Fault> atCrossings(Plan plan) {
        List<Fault> bridges = new ArrayList<>();
        for (Key key : plan.keys()) {
            bridges.add(new Bridge(key.row(), key.index(), key.column(), key.index()));
        }
        return bridges;
    }

    @Override
    public FaultKind kind() {
        return key == otherKey ? FaultKind.CROSSING_BRIDGED : FaultKind.BRIDGE;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.join(node(wiring, net, key), node(wiring, otherNet, otherKey));
    }

    private static int node(Wiring wiring, int net, int key) {
        return wiring.joint(
                wiring.plan().keys().get(key), wiring.plan().nets().get(net).kind());
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part.GapPart(net, key, otherNet, otherKey));
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return Set.of(net, otherNet);
    }

    @Override
    public String code(Plan plan) {
        String keys = key == otherKey ? name(plan, key) : name(plan, key) + ":" + name(plan, otherKey);
        return kind().code() + ":" + plan.nets().get(net).name() + ":"
                + plan.nets().get(otherNet).name() + ":" + keys;
    }

    @Override
    public String says(Plan plan) {
        String nets = plan.nets().get(net).name() + " and "
                + plan.nets().get(otherNet).name() + " are bridged";
        return key == otherKey
                ? nets + " at " + spoken(plan, key)
                : nets + " between " + spoken(plan, key) + " and " + spoken(plan, otherKey);
    }

    @Override
    public String meter(Plan plan) {
        return "from " + plan.nets().get(net).name() + " to "
                + plan.nets().get(otherNet).name()
                + ": a beep says that they meet, but not where; look along both under a lens";
    }

    @Override
    public String repair(Plan plan) {
        Net on = plan.nets().get(net);
        return "Look for a solder bridge, a stray leg or melted insulation between " + on.name() + " and "
                + plan.nets().get(otherNet).name() + " near " + spoken(plan, key) + " ("
                + SolderSide.numbered(plan, on, on.jointOf(key)) + ", solder side), and clear it.";
    }

    private static String spoken(Plan plan, int key) {
        return plan.keys().get(key).spoken();
    }

    private static String name(Plan plan, int key) {
        return plan.keys().get(key).name();
    }
}
