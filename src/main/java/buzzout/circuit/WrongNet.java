package buzzout.circuit;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One end of a key is soldered to a neighbouring net.
 *
 * @param strayed whether its row end or its column end strayed
 * @param atKey the neighbouring key whose joint it is soldered to
 */
public record WrongNet(int key, NetKind strayed, int atKey) implements Fault {
    static List<Fault> all(Plan plan) {
        List<Fault> faults = new ArrayList<>();
        for (NetKind kind : NetKind.values()) {
            for (Key key : plan.keys()) {
                for (int step : new int[] {-1, 1}) {
                    nearestOn(plan, kind, key, key.net(kind) + step)
                            .ifPresent(at -> faults.add(new WrongNet(key.index(), kind, at.index())));
                }
            }
        }
        return faults;
    }

    private static Optional<Key> nearestOn(Plan plan, NetKind kind, Key key, int net) {
        Optional<Key> nearest = Optional.empty();
        for (Key other : plan.keys()) {
            if (other.net(kind) == net
                    && (nearest.isEmpty() || Neighbours.apart(key, other) < Neighbours.apart(key, nearest.get()))) {
                nearest = Optional.of(other);
            }
        }
        return nearest;
    }

    @Override
    public FaultKind kind() {
        return FaultKind.WRONG_NET;
    }

    @Override
    public void change(Wiring wiring) {
        Plan plan = wiring.plan();
        wiring.moveEnd(plan.keys().get(key), strayed, wiring.joint(plan.keys().get(atKey), strayed));
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part.EndPart(key, strayed));
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return Set.of(
                plan.keys().get(key).row(),
                plan.keys().get(key).column(),
                plan.keys().get(atKey).net(strayed));
    }

    @Override
    public OptionalInt onlyKey() {
        return OptionalInt.of(key);
    }

    @Override
    public String code(Plan plan) {
        return kind().code() + ":" + plan.keys().get(key).name() + ":"
                + wrong(plan).name();
    }

    @Override
    public String says(Plan plan) {
        return plan.keys().get(key).spoken() + " is wired to " + wrong(plan).name() + " instead of "
                + right(plan).name();
    }

    @Override
    public String meter(Plan plan) {
        return "from the " + strayed.word() + " end of " + plan.keys().get(key).spoken() + " to "
                + wrong(plan).name() + ": a beep means that it is wired there";
    }

    @Override
    public String repair(Plan plan) {
        return "Move the " + strayed.word() + " end of " + plan.keys().get(key).spoken() + " from "
                + wrong(plan).name() + " to " + right(plan).name() + ".";
    }

    private Net wrong(Plan plan) {
        return plan.nets().get(plan.keys().get(atKey).net(strayed));
    }

    private Net right(Plan plan) {
        return plan.nets().get(plan.keys().get(key).net(strayed));
    }
}
