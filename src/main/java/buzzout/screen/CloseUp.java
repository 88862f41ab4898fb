package buzzout.screen;

import buzzout.circuit.Bridge;
import buzzout.circuit.Fault;
import buzzout.circuit.LinkOpen;
import buzzout.circuit.Part;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The few keys around a fault, as they lie on the solder side: from left to right along a row, or from top to bottom
 * along a column.
 *
 * @param kind of the chain that the keys are shown along
 * @param keys in the order in which they are seen; none for a fault of the whole board
 * @param suspected joints to look at
 */
record CloseUp(Plan plan, Fault fault, NetKind kind, List<Key> keys, Set<Joint> suspected) {
    /** What fits the smallest screen. */
    private static final int MOST_IN_A_ROW = 5;

    private static final int MOST_IN_A_COLUMN = 4;

    CloseUp {
        keys = List.copyOf(keys);
        suspected = Set.copyOf(suspected);
    }

    static CloseUp of(Plan plan, Fault fault) {
        List<Joint> joints = Part.joints(plan, fault.parts());
        Set<Joint> suspected = Set.copyOf(joints);
        if (joints.isEmpty()) {
            return new CloseUp(plan, fault, NetKind.ROW, List.of(), suspected);
        }
        if (fault instanceof Bridge bridge && bridge.key() != bridge.otherKey()) {
            List<Key> both = List.of(plan.keys().get(bridge.key()), plan.keys().get(bridge.otherKey()));
            NetKind along = isUpright(both) ? NetKind.COLUMN : NetKind.ROW;
            return new CloseUp(plan, fault, along, seen(along, both), suspected);
        }
        Joint first = joints.stream()
                .filter(joint -> joint.kind() == plan.diodes())
                .findFirst()
                .orElse(joints.get(0));
        Net net = plan.nets().get(first.net(plan));
        List<Integer> start = joints.stream()
                .filter(joint -> joint.net(plan) == first.net(plan))
                .map(joint -> net.jointOf(joint.key()))
                .toList();
        List<Key> keys = around(net, start).stream()
                .map(joint -> plan.keys().get(net.joints().get(joint)))
                .toList();
        return new CloseUp(plan, fault, net.kind(), seen(net.kind(), keys), suspected);
    }

    /** A path through a net's links that grows at both ends by turns. */
    private static List<Integer> around(Net net, List<Integer> start) {
        Deque<Integer> path = new ArrayDeque<>(start);
        Set<Integer> taken = new HashSet<>(start);
        int most = net.kind() == NetKind.ROW ? MOST_IN_A_ROW : MOST_IN_A_COLUMN;
        boolean grown = true;
        while (grown && path.size() < most) {
            grown = false;
            for (boolean atEnd : new boolean[] {false, true}) {
                Optional<Integer> next = next(net, atEnd ? path.getLast() : path.getFirst(), taken);
                if (next.isPresent() && path.size() < most) {
                    taken.add(next.get());
                    if (atEnd) {
                        path.addLast(next.get());
                    } else {
                        path.addFirst(next.get());
                    }
                    grown = true;
                }
            }
        }
        return new ArrayList<>(path);
    }

    private static Optional<Integer> next(Net net, int joint, Set<Integer> taken) {
        return net.links().stream()
                .filter(link -> link.from() == joint || link.to() == joint)
                .map(link -> link.from() == joint ? link.to() : link.from())
                .filter(other -> !taken.contains(other))
                .findFirst();
    }

    private static boolean isUpright(List<Key> both) {
        double across = both.get(0).place().middle() - both.get(1).place().middle();
        double down = both.get(0).place().y() - both.get(1).place().y();
        return Math.abs(down) > Math.abs(across);
    }

    private static List<Key> seen(NetKind along, List<Key> keys) {
        List<Key> ordered = new ArrayList<>(keys);
        Key first = keys.get(0);
        Key last = keys.get(keys.size() - 1);
        boolean turned = along == NetKind.ROW
                ? first.place().middle() < last.place().middle()
                : first.place().y() > last.place().y();
        if (turned) {
            Collections.reverse(ordered);
        }
        return ordered;
    }

    /** What lies between a key and the one shown after it, at their joints of a kind. */
    Between between(int at, NetKind joints) {
        Key key = keys.get(at);
        Key other = keys.get(at + 1);
        if (fault instanceof Bridge bridge
                && bridge.key() != bridge.otherKey()
                && plan.nets().get(bridge.net()).kind() == joints) {
            return Between.BRIDGE;
        }
        if (key.net(joints) != other.net(joints)) {
            return Between.NOTHING;
        }
        Net net = plan.nets().get(key.net(joints));
        int joint = net.jointOf(key.index());
        int otherJoint = net.jointOf(other.index());
        for (int i = 0; i < net.links().size(); i++) {
            Link link = net.links().get(i);
            if (link.from() == Math.min(joint, otherJoint) && link.to() == Math.max(joint, otherJoint)) {
                boolean open =
                        fault instanceof LinkOpen broken && broken.net() == key.net(joints) && broken.link() == i;
                return open ? Between.SUSPECT : link.jumper() ? Between.JUMPER : Between.LINK;
            }
        }
        return Between.NOTHING;
    }

    /** Whether a net goes on beyond the first or the last key shown. */
    boolean goesOn(boolean beyondLast) {
        Key end = keys.get(beyondLast ? keys.size() - 1 : 0);
        Net net = plan.nets().get(end.net(kind));
        Set<Integer> shown = new HashSet<>();
        keys.stream().filter(key -> key.net(kind) == end.net(kind)).forEach(key -> shown.add(net.jointOf(key.index())));
        return next(net, net.jointOf(end.index()), shown).isPresent();
    }

    /** What joins, or should not join, two joints that are shown side by side. */
    enum Between {
        NOTHING,
        LINK,
        JUMPER,
        /** A link that may be open. */
        SUSPECT,
        /** What should not be there. */
        BRIDGE
    }
}
