package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;

/** The netlist of one board as it is soldered, open to change by faults. Nodes are numbered as in its layout. */
public final class Wiring {
    private final Layout layout;
    private final BitSet openLinks = new BitSet();
    private final BitSet openLeads = new BitSet();
    private final BitSet openKeys = new BitSet();
    private final BitSet heldKeys = new BitSet();
    private final BitSet turned = new BitSet();
    private final BitSet bypassed = new BitSet();
    private final BitSet grounded = new BitSet();
    private final BitSet dragged = new BitSet();
    private final List<int[]> extraWires = new ArrayList<>(4);
    private int[] leadPin = {};
    private int[] rowJoint;
    private int[] columnJoint;
    private boolean allTurned;
    private final List<Fault> loose = new ArrayList<>(1);

    public Wiring(Layout layout) {
        this.layout = layout;
        rowJoint = layout.rowJoint;
        columnJoint = layout.columnJoint;
    }

    /** With these faults, made in the order of their kinds, whatever order they come in. */
    static Wiring of(Layout layout, Collection<? extends Fault> faults) {
        Wiring wiring = new Wiring(layout);
        List<Fault> inOrder = new ArrayList<>(faults);
        inOrder.sort((one, other) -> one.kind().compareTo(other.kind()));
        inOrder.forEach(fault -> fault.change(wiring));
        return wiring;
    }

    public Plan plan() {
        return layout.plan;
    }

    /** The node of a key's planned joint on its row or column. */
    public int joint(Key key, NetKind kind) {
        return layout.joint(key, kind);
    }

    public void openLink(int net, int link) {
        openLinks.set(layout.firstLink[net] + link);
    }

    public void takeLeadOff(int net) {
        openLeads.set(net);
    }

    /** Swaps the controller ends of two leads. */
    public void swapLeads(int net, int other) {
        if (leadPin.length == 0) {
            leadPin = new int[layout.leadJoint.length];
            java.util.Arrays.setAll(leadPin, pin -> pin);
        }
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
        turned.set(key.index());
    }

    public void bypassDiode(Key key) {
        bypassed.set(key.index());
    }

    public void turnAllDiodes() {
        allTurned = !allTurned;
    }

    /** Solders the row or column end of a key to another net's joint. */
    public void moveEnd(Key key, NetKind kind, int node) {
        if (kind == NetKind.ROW) {
            rowJoint = rowJoint.clone();
            rowJoint[key.index()] = node;
        } else {
            columnJoint = columnJoint.clone();
            columnJoint[key.index()] = node;
        }
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

    /** At one moment the wiring is as it is now, at the next it is as this fault would leave it. */
    public void loosen(Fault open) {
        loose.add(open);
    }

    /** What is open only at times. */
    List<Fault> loose() {
        return loose;
    }

    Layout layout() {
        return layout;
    }

    boolean isOpen(Key key) {
        return openKeys.get(key.index());
    }

    BitSet heldKeys() {
        return heldKeys;
    }

    boolean isBypassed(Key key) {
        return bypassed.get(key.index());
    }

    BitSet draggedPins() {
        return dragged;
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
        return currentLeavesTo(key, this);
    }

    /** On this board, for a key that is soldered as on another. */
    NetKind currentLeavesTo(Key key, Wiring soldered) {
        NetKind planned = layout.plan.stripe();
        return soldered.turned.get(key.index()) == allTurned ? planned : planned.other();
    }

    /** Calls back for every piece that conducts both ways with no key pressed: links, leads, bridges, grounds. */
    void forEachWire(WireVisitor visitor) {
        for (int net = 0; net < layout.nets(); net++) {
            forEachLink(net, visitor);
        }
        forEachOtherWire(visitor);
    }

    boolean hasOpenLink(int net) {
        int open = openLinks.nextSetBit(layout.firstLink[net]);
        return open >= 0 && open < layout.firstLink[net + 1];
    }

    void forEachLink(int net, WireVisitor visitor) {
        for (int link = openLinks.nextClearBit(layout.firstLink[net]);
                link < layout.firstLink[net + 1];
                link = openLinks.nextClearBit(link + 1)) {
            visitor.wire(layout.linkFrom[link], layout.linkTo[link]);
        }
    }

    /** The same for those that are no links. */
    void forEachOtherWire(WireVisitor visitor) {
        for (int net = 0; net < layout.nets(); net++) {
            if (!openLeads.get(net)) {
                visitor.wire(leadPin.length == 0 ? net : leadPin[net], layout.leadJoint[net]);
            }
        }
        for (int[] wire : extraWires) {
            visitor.wire(wire[0], wire[1]);
        }
        for (int pin = grounded.nextSetBit(0); pin >= 0; pin = grounded.nextSetBit(pin + 1)) {
            visitor.wire(pin, layout.ground);
        }
    }

    interface WireVisitor {
        void wire(int node, int other);
    }
}
