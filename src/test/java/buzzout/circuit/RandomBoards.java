package buzzout.circuit;

import buzzout.plan.Controller;
import buzzout.plan.Controllers;
import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Place;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** Boards with gaps, branches, jumpers, leads and stripes anywhere, and what can be wrong with them. */
final class RandomBoards {
    private RandomBoards() {}

    /** One to six rows and columns; so many diodes in series are a sure low. */
    static Plan plan(Random random, int sureDiodes) {
        int rows = 1 + random.nextInt(6);
        int columns = 1 + random.nextInt(6);
        List<Key> keys = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                // The first key of every net is always there.
                if (row == 0 || column == 0 || random.nextInt(4) > 0) {
                    String name = (char) ('A' + row) + String.valueOf(column + 1);
                    keys.add(new Key(keys.size(), name, row, rows + column, new Place(column, row, 1)));
                }
            }
        }
        List<Net> nets = new ArrayList<>();
        for (int net = 0; net < rows + columns; net++) {
            nets.add(net(random, net, net < rows ? NetKind.ROW : NetKind.COLUMN, keys));
        }
        Optional<String> spare = random.nextBoolean() ? Optional.of("L7") : Optional.empty();
        return new Plan("Random", controller(sureDiodes), kind(random), kind(random), nets, keys, spare, 25);
    }

    private static Net net(Random random, int index, NetKind kind, List<Key> keys) {
        List<Integer> joints = new ArrayList<>(keys.stream()
                .filter(key -> key.net(kind) == index)
                .map(Key::index)
                .toList());
        Collections.shuffle(joints, random);
        List<Link> links = new ArrayList<>();
        for (int joint = 1; joint < joints.size(); joint++) {
            int from = random.nextInt(3) == 0 ? random.nextInt(joint) : joint - 1;
            links.add(new Link(from, joint, random.nextInt(5) == 0));
        }
        String pin = Controllers.ATMEGA2560.pins().get(index);
        int lead = random.nextInt(joints.size());
        return new Net("N" + index, kind, pin, joints, links, lead, Optional.empty());
    }

    static NetKind kind(Random random) {
        return random.nextBoolean() ? NetKind.ROW : NetKind.COLUMN;
    }

    private static Controller controller(int sureDiodes) {
        double lowVolts = 0.6 * sureDiodes + 0.3;
        Controller.PullUp pullUp = Controllers.ATMEGA2560.pullUpOhms();
        return new Controller(
                "Any", Controllers.ATMEGA2560.pins(), Map.of(), Map.of(), Map.of(), 5, lowVolts, lowVolts + 1, pullUp);
    }

    /** Up to so many faults, none in a part that another spoils. */
    static List<Fault> faults(Random random, Plan plan, int most) {
        List<Fault> all = new ArrayList<>(Catalogue.of(plan));
        Collections.shuffle(all, random);
        Set<Part> spoiled = new HashSet<>();
        return all.stream()
                .filter(fault -> Collections.disjoint(spoiled, fault.parts()) && spoiled.addAll(fault.parts()))
                .limit(random.nextInt(most + 1))
                .toList();
    }

    /** Up to so many keys that are held together. */
    static BitSet held(Random random, Plan plan, int most) {
        BitSet held = new BitSet();
        for (int count = random.nextInt(most + 1); count > 0; count--) {
            held.set(random.nextInt(plan.keys().size()));
        }
        return held;
    }
}
