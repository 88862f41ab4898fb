package buzzout.session;

import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.Arrays;
import java.util.BitSet;

/**
 * The parts that a key's current passes through, from one controller pin to the other: two leads, the links between them
 * and the key's joints, and the key itself with its diode. Parts are numbered: leads by net, then all links, then keys.
 */
final class Routes {
    private final Plan plan;
    private final int[] firstLink;
    private final int firstKey;
    private final BitSet[] routes;

    Routes(Plan plan) {
        this.plan = plan;
        int nets = plan.nets().size();
        firstLink = new int[nets];
        int part = nets;
        for (int net = 0; net < nets; net++) {
            firstLink[net] = part;
            part += plan.nets().get(net).links().size();
        }
        firstKey = part;
        routes = new BitSet[plan.keys().size()];
        Arrays.setAll(routes, key -> new BitSet());
        for (Key key : plan.keys()) {
            routes[key.index()].set(own(key.index()));
        }
        for (int net = 0; net < nets; net++) {
            follow(net);
        }
    }

    int parts() {
        return firstKey + plan.keys().size();
    }

    /** The parts on a key's route; not to be changed. */
    BitSet of(int key) {
        return routes[key];
    }

    /** The key itself. */
    int own(int key) {
        return firstKey + key;
    }

    boolean isLink(int part) {
        return part >= plan.nets().size() && part < firstKey;
    }

    /** Adds to each of a net's keys the way to the lead, one link further in each round. */
    private void follow(int index) {
        Net net = plan.nets().get(index);
        BitSet[] ways = new BitSet[net.joints().size()];
        ways[net.leadJoint()] = new BitSet();
        ways[net.leadJoint()].set(index);
        for (int round = 0; round < net.links().size(); round++) {
            for (int number = 0; number < net.links().size(); number++) {
                Link link = net.links().get(number);
                extend(ways, link.from(), link.to(), firstLink[index] + number);
                extend(ways, link.to(), link.from(), firstLink[index] + number);
            }
        }
        for (int joint = 0; joint < ways.length; joint++) {
            if (ways[joint] != null) {
                routes[net.joints().get(joint)].or(ways[joint]);
            }
        }
    }

    private static void extend(BitSet[] ways, int known, int next, int link) {
        if (ways[known] != null && ways[next] == null) {
            ways[next] = (BitSet) ways[known].clone();
            ways[next].set(link);
        }
    }
}
