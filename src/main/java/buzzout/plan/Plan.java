package buzzout.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What the board should be.
 *
 * @param stripe the kind of net that the diodes' stripes face: current flows towards it
 * @param diodes the kind of net whose chain is made of diode legs; the switch pins sit on the other kind
 * @param nets all rows, then all columns; a net's index is also its pin's place in the list sent to the probe
 * @param keys in reading order, cap side
 * @param sparePin the pin of the flying lead for touches, where one is free
 * @param bounceLimitMillis a key that bounces longer is marked
 * @param priors how probable one named fault of a kind is, by the word that begins its code, where the plan says so
 */
public record Plan(
        String name,
        Controller controller,
        NetKind stripe,
        NetKind diodes,
        List<Net> nets,
        List<Key> keys,
        Optional<String> sparePin,
        double bounceLimitMillis,
        Map<String, Double> priors) {
    /** A sweep's result keeps one 64-bit word a pin. */
    public static final int MOST_NETS = 63;

    public Plan {
        nets = List.copyOf(nets);
        keys = List.copyOf(keys);
        priors = Map.copyOf(priors);
    }

    /** With the priors that the program judges by. */
    public Plan(
            String name,
            Controller controller,
            NetKind stripe,
            NetKind diodes,
            List<Net> nets,
            List<Key> keys,
            Optional<String> sparePin,
            double bounceLimitMillis) {
        this(name, controller, stripe, diodes, nets, keys, sparePin, bounceLimitMillis, Map.of());
    }

    public Net row(Key key) {
        return nets.get(key.row());
    }

    public Net column(Key key) {
        return nets.get(key.column());
    }

    public List<Net> nets(NetKind kind) {
        List<Net> ofKind = new ArrayList<>();
        for (Net net : nets) {
            if (net.kind() == kind) {
                ofKind.add(net);
            }
        }
        return Collections.unmodifiableList(ofKind);
    }

    public Optional<Key> key(String name) {
        for (Key key : keys) {
            if (key.name().equals(name)) {
                return Optional.of(key);
            }
        }
        return Optional.empty();
    }

    public Optional<Net> net(String name) {
        for (Net net : nets) {
            if (net.name().equals(name)) {
                return Optional.of(net);
            }
        }
        return Optional.empty();
    }

    /**
     * Whether its rows and columns are made up, to be learnt from a session: then every net is called as its pin, and
     * only keys, places and pins mean anything.
     */
    public boolean isMadeUp() {
        for (Net net : nets) {
            if (!net.name().equals(net.pin())) {
                return false;
            }
        }
        return true;
    }

    public int indexOf(Net net) {
        return nets.indexOf(net);
    }

    /** The indices of all nets. */
    public Set<Integer> netIndices() {
        Set<Integer> indices = new HashSet<>();
        for (int net = 0; net < nets.size(); net++) {
            indices.add(net);
        }
        return Collections.unmodifiableSet(indices);
    }

    /** The pins in the order sent to the probe: one for each net, then the spare pin. */
    public List<String> pins() {
        List<String> pins = new ArrayList<>();
        nets.forEach(net -> pins.add(net.pin()));
        sparePin.ifPresent(pins::add);
        return Collections.unmodifiableList(pins);
    }

    /** The place of the spare pin in {@link #pins()}, where there is one. */
    public OptionalInt sparePinIndex() {
        return sparePin.isPresent() ? OptionalInt.of(nets.size()) : OptionalInt.empty();
    }

    /** The place of a pin in {@link #pins()}. */
    public OptionalInt pinIndex(String pin) {
        int index = pins().indexOf(pin);
        return index < 0 ? OptionalInt.empty() : OptionalInt.of(index);
    }
}
