package buzzout.probe;

import buzzout.plan.Controller;
import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Place;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** A panel of 3 rows and 4 columns, K1 to K12, on an ATmega32U4, stripes towards the rows. */
final class TestBoard {
    static final int ROWS = 3;
    static final int COLUMNS = 4;

    private static final List<String> PINS = List.of("F0", "F1", "F4", "B1", "B2", "B3", "B4");

    private static final Controller CONTROLLER = new Controller(
            "ATmega32U4",
            List.of("B0", "B1", "B2", "B3", "B4", "F0", "F1", "F4", "F5"),
            Map.of(),
            Map.of(),
            Map.of(),
            5.0,
            0.9,
            1.9,
            new Controller.PullUp(50_000, 20_000));

    private TestBoard() {}

    static Plan plan() {
        List<Key> keys = new ArrayList<>();
        for (int index = 0; index < ROWS * COLUMNS; index++) {
            int row = index / COLUMNS;
            int column = index % COLUMNS;
            keys.add(new Key(index, "K" + (index + 1), row, ROWS + column, new Place(column, row, 1)));
        }
        List<Net> nets = new ArrayList<>();
        for (int net = 0; net < ROWS + COLUMNS; net++) {
            int here = net;
            NetKind kind = net < ROWS ? NetKind.ROW : NetKind.COLUMN;
            List<Integer> joints = keys.stream()
                    .filter(key -> key.net(kind) == here)
                    .map(Key::index)
                    .toList();
            List<Link> links = IntStream.range(1, joints.size())
                    .mapToObj(to -> new Link(to - 1, to, false))
                    .toList();
            String name = net < ROWS ? "R" + (net + 1) : "C" + (net - ROWS + 1);
            nets.add(new Net(name, kind, PINS.get(net), joints, links, 0, Optional.empty()));
        }
        return new Plan("Panel", CONTROLLER, NetKind.ROW, NetKind.ROW, nets, keys, Optional.of("B0"), 5);
    }

    static Key key(String name) {
        return plan().key(name).orElseThrow();
    }
}
