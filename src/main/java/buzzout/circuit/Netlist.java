package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.BitSet;
import java.util.Collection;
import java.util.List;

/**
 * A board's parts and nodes as text, one part on each line.
 *
 * <p>{@code pin F4 n0} names the node of a controller's pin, {@code spare B7 n16} that of the flying lead's pin, and
 * {@code joint R2 E n30} that of the joint of a net at a key, for the lead to touch; {@code rise F4 1.84} says how many
 * microseconds a pin takes to read high once it is let go; {@code wire n0 n1} always conducts; {@code diode n2 n3}
 * conducts from the first node to the second; {@code switch KEY n4 n5} conducts while the key is pressed; {@code ground
 * n7} and {@code led n7} tie a node to ground, or load it with a LED to ground. A last line {@code # loose CODE} names each
 * piece that is open only at times; it is written as it conducts.
 */
public final class Netlist {
    private final Plan plan;
    private final Wiring wiring;
    private final StringBuilder text = new StringBuilder();

    private Netlist(Wiring wiring) {
        this.plan = wiring.plan();
        this.wiring = wiring;
    }

    public static String text(Plan plan, Collection<? extends Fault> faults) {
        return new Netlist(Wiring.of(new Layout(plan), faults)).written();
    }

    private String written() {
        List<String> pins = plan.pins();
        for (int pin = 0; pin < pins.size(); pin++) {
            line(pin < plan.nets().size() ? "pin" : "spare", pins.get(pin), node(pin));
        }
        RiseTimes rises = RiseTimes.of(wiring, false);
        for (int pin = 0; pin < pins.size(); pin++) {
            String name = pins.get(pin);
            rises.nanos(pin).ifPresent(nanos -> line("rise", name, Double.toString(nanos / 1000.0)));
        }
        wiring.forEachWire((node, other) -> line("wire", node(node), node(other)));
        plan.keys().forEach(this::key);
        if (plan.sparePin().isPresent()) {
            plan.nets().forEach(this::joints);
        }
        BitSet dragged = wiring.draggedPins();
        dragged.stream().forEach(pin -> line("led", node(pin)));
        line("ground", node(wiring.layout().ground));
        wiring.loose().forEach(fault -> line("# loose", fault.code(plan)));
        return text.toString();
    }

    /** The diode sits at the end whose chain is made of diode legs, the switch at the other. */
    private void key(Key key) {
        NetKind diodeSide = plan.diodes();
        int inside = wiring.layout().nodes() + key.index();
        int end = wiring.end(key, diodeSide);
        int switchEnd = wiring.end(key, diodeSide.other());
        line("switch", key.name(), node(switchEnd), node(inside));
        if (wiring.heldKeys().get(key.index())) {
            line("wire", node(switchEnd), node(inside));
        }
        if (wiring.isOpen(key)) {
            return;
        }
        if (wiring.isBypassed(key)) {
            line("wire", node(inside), node(end));
        } else if (wiring.cathodeEnd(key) == end) {
            line("diode", node(inside), node(end));
        } else {
            line("diode", node(end), node(inside));
        }
    }

    private void joints(Net net) {
        for (int index : net.joints()) {
            Key key = plan.keys().get(index);
            line("joint", net.name(), key.name(), node(wiring.joint(key, net.kind())));
        }
    }

    private static String node(int number) {
        return "n" + number;
    }

    private void line(String... words) {
        text.append(String.join(" ", words)).append('\n');
    }
}
