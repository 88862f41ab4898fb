package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;

/**
 * A plan's netlist as it should be, numbered once for all the circuits that are asked about it.
 *
 * <p>Nodes: first the pins, one for each net and then the spare pin; then every net's joints, net by net in solder
 * order; last, ground. Links are numbered net by net.
 */
public final class Layout {
    final Plan plan;
    final int pins;
    final int ground;
    /** For each net, and one more where the last ends. */
    final int[] firstJoint;
    /** The same. */
    final int[] firstLink;

    final int[] linkFrom;
    final int[] linkTo;
    final int[] leadJoint;
    final int[] rowJoint;
    final int[] columnJoint;
    /** For each node the one that stands for all that planned links tie together. */
    final int[] linked;

    public Layout(Plan plan) {
        this.plan = plan;
        int nets = plan.nets().size();
        pins = nets + (plan.sparePin().isPresent() ? 1 : 0);
        firstJoint = new int[nets + 1];
        firstLink = new int[nets + 1];
        int links = 0;
        for (Net net : plan.nets()) {
            links += net.links().size();
        }
        linkFrom = new int[links];
        linkTo = new int[links];
        leadJoint = new int[nets];
        rowJoint = new int[plan.keys().size()];
        columnJoint = new int[plan.keys().size()];
        int node = pins;
        int link = 0;
        for (int index = 0; index < nets; index++) {
            Net net = plan.nets().get(index);
            firstJoint[index] = node;
            firstLink[index] = link;
            for (Link planned : net.links()) {
                linkFrom[link] = node + planned.from();
                linkTo[link++] = node + planned.to();
            }
            leadJoint[index] = node + net.leadJoint();
            int[] keyJoint = net.kind() == NetKind.ROW ? rowJoint : columnJoint;
            for (int key : net.joints()) {
                keyJoint[key] = node++;
            }
        }
        firstJoint[nets] = node;
        firstLink[nets] = link;
        ground = node;
        linked = Lumps.linked(this); // last, for it asks all of the above
    }

    int nets() {
        return leadJoint.length;
    }

    int nodes() {
        return ground + 1;
    }

    int joint(Key key, NetKind kind) {
        return (kind == NetKind.ROW ? rowJoint : columnJoint)[key.index()];
    }
}
