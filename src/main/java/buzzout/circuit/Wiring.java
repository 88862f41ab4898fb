package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The netlist of one board as it is soldered, open to change by faults.
 *
 * <p>Nodes: first the pins, one for each net and then the spare pin; then every net's joints, net by net in solder
 * order; last, ground.
 */
public final class Wiring {
    /** How a key's diode sits. */
    enum Diode {
        AS_PLANNED,
        TURNED,
        BYPASSED
    }

    private final Plan plan;
    private final int[] firstJoint;
    private final int ground;

    private final int[] leadJoint;
    private final int[] leadPin;
    private final BitSet openLeads = new BitSet();
    private final List<BitSet> openLinks;
    private final Diode[] diodes;
    private final BitSet openKeys = new BitSet();
    private final BitSet heldKeys = new BitSet();
    private final int[] rowJoint;
    private final int[] columnJoint;
    private boolean allTurned;
    private final List<int[]> extraWires = new ArrayList<>();
    private final BitSet grounded = new BitSet();
    private final BitSet dragged = new BitSet();

    public Wiring(Plan plan) {
        this.plan = plan;
        int nets = plan.nets().size();
        firstJoint = new int[nets];
        int node = pins();
        for (int net = 0; net < nets; net++) {
            firstJoint[net] = node;
            node += plan.nets().get(net).joints().size();
        }
        ground = node;
        leadJoint = new int[nets];
        leadPin = new int[nets];
        openLinks = new ArrayList<>(nets);
        for (int net = 0; net < nets; net++) {
            leadJoint[net] = firstJoint[net] + plan.nets().get(net).leadJoint();
            leadPin[net] = net;
            openLinks.add(new BitSet());
        }
        diodes = new Diode[plan.keys().size()];
        rowJoint = new int[plan.keys().size()];
        columnJoint = new int[plan.keys().size()];
        for (Key key : plan.keys()) {
            diodes[key.index()] = Diode.AS_PLANNED;
            rowJoint[key.index()] = joint(key, NetKind.ROW);
            columnJoint[key.index()] = joint(key, NetKind.COLUMN);
        }
    }

    public Plan plan() {
        return plan;
    }

    /** The node of a key's planned joint on its row or column. */
    public int joint(Key key, NetKind kind) {
        int net = key.net(kind);
        return firstJoint[net] + plan.nets().get(net).jointOf(key.index());
    }

    public void openLink(int net, int link) {
        openLinks.get(net).set(link);
    }

    public void takeLeadOff(int net) {
        openLeads.set(net);
    }

    /** Swaps the controller ends of two leads. */
    public void swapLeads(int net, int other) {
        int pin = leadPin[net];
        leadPin[net] = leadPin[other];
        leadPin[other] = pin;
    }

    public void openKey(Key key) {
        openKeys.set(key.index());
    }

    public void holdSwitch(Key key) {
        heldKeys.set(key.index());
    }

    public void turnDiode(Key key) {
        diodes[key.index()] = Diode.TURNED;
    }

    public void bypassDiode(Key key) {
        diodes[key.index()] = Diode.BYPASSED;
    }

    public void turnAllDiodes() {
        allTurned = !allTurned;
    }

    /** Solders the row or column end of a key to another net's joint. */
    public void moveEnd(Key key, NetKind kind, int node) {
        (kind == NetKind.ROW ? rowJoint : columnJoint)[key.index()] = node;
    }

    public void join(int node, int other) {
        extraWires.add(new int[] {node, other});
    }

    /** Ties a pin to ground, so that it reads low whatever is driven. */
    public void groundPin(int net) {
        grounded.set(net);
    }

    /** Loads a pin so that it rises only to a level between low and high, as a LED to ground does. */
    public void dragPin(int net) {
        dragged.set(net);
    }

    int pins() {
        return plan.nets().size() + (plan.sparePin().isPresent() ? 1 : 0);
    }

    int nodes() {
        return ground + 1;
    }

    int ground() {
        return ground;
    }

    boolean isOpen(Key key) {
        return openKeys.get(key.index());
    }

    boolean isHeld(Key key) {
        return heldKeys.get(key.index());
    }

    boolean isBypassed(Key key) {
        return diodes[key.index()] == Diode.BYPASSED;
    }

    /** The end of a key's branch that current enters by, its diode's anode side. */
    int anodeEnd(Key key) {
        return end(key, currentLeavesTo(key).other());
    }

    int cathodeEnd(Key key) {
        return end(key, currentLeavesTo(key));
    }

    int end(Key key, NetKind kind) {
        return (kind == NetKind.ROW ? rowJoint : columnJoint)[key.index()];
    }

    private NetKind currentLeavesTo(Key key) {
        boolean turned = (diodes[key.index()] == Diode.TURNED) != allTurned;
        return turned ? plan.stripe().other() : plan.stripe();
    }

    /** Calls back for every piece that conducts both ways with no key pressed: links, leads, bridges, grounds. */
    void forEachWire(WireVisitor visitor) {
        for (int net = 0; net < plan.nets().size(); net++) {
            Net planned = plan.nets().get(net);
            BitSet open = openLinks.get(net);
            for (int link = 0; link < planned.links().size(); link++) {
                if (!open.get(link)) {
                    visitor.wire(
                            firstJoint[net] + planned.links().get(link).from(),
                            firstJoint[net] + planned.links().get(link).to());
                }
            }
            if (!openLeads.get(net)) {
                visitor.wire(leadPin[net], leadJoint[net]);
            }
        }
        for (int[] wire : extraWires) {
            visitor.wire(wire[0], wire[1]);
        }
        for (int pin = grounded.nextSetBit(0); pin >= 0; pin = grounded.nextSetBit(pin + 1)) {
            visitor.wire(pin, ground);
        }
    }

    BitSet draggedPins() {
        return dragged;
    }

    interface WireVisitor {
        void wire(int node, int other);
    }
}
