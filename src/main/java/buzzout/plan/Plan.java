package buzzout.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

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
        return nets.stream().filter(net -> net.kind() == kind).toList();
    }

    public Optional<Key> key(String name) {
        return keys.stream().filter(key -> key.name().equals(name)).findFirst();
    }

    public Optional<Net> net(String name) {
        return nets.stream().filter(net -> net.name().equals(name)).findFirst();
    }

    /**
     * Whether its rows and columns are made up, to be learnt from a session: then every net is called as its pin, and
     * only keys, places and pins mean anything.
     */
    public boolean isMadeUp() {
        return nets.stream().allMatch(net -> net.name().equals(net.pin()));
    }

    public int indexOf(Net net) {
        return nets.indexOf(net);
    }

    /** The pins in the order sent to the probe: one for each net, then the spare pin. */
    public List<String> pins() {
        return java.util.stream.Stream.concat(nets.stream().map(Net::pin), sparePin.stream())
                .toList();
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
