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
    final int[] firstLink;
    final int[] firstJoint;
    final int[] linkFrom;
    final int[] linkTo;
    final int[] leadJoint;
    final int[] rowJoint;
    final int[] columnJoint;

    public Layout(Plan plan) {
        this.plan = plan;
        int nets = plan.nets().size();
        pins = nets + (plan.sparePin().isPresent() ? 1 : 0);
        firstLink = new int[nets];
        firstJoint = new int[nets];
        linkFrom =
                new int[plan.nets().stream().mapToInt(net -> net.links().size()).sum()];
        linkTo = new int[linkFrom.length];
        leadJoint = new int[nets];
        rowJoint = new int[plan.keys().size()];
        columnJoint = new int[plan.keys().size()];
        int node = pins;
        int link = 0;
        for (int index = 0; index < nets; index++) {
            Net net = plan.nets().get(index);
            firstLink[index] = link;
            firstJoint[index] = node;
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
        ground = node;
    }

    int nodes() {
        return ground + 1;
    }

    int joint(Key key, NetKind kind) {
        return (kind == NetKind.ROW ? rowJoint : columnJoint)[key.index()];
    }
}
