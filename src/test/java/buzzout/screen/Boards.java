package buzzout.screen;

import buzzout.circuit.Circuit;
import buzzout.plan.Controllers;
import buzzout.plan.Key;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Place;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** Boards of odd shapes and sizes. */
final class Boards {
    private Boards() {}

    /** A plain grid, keys named by row letter and column number. */
    static Plan panel(int rows, int columns) {
        return board("Panel " + rows + "x" + columns, rows, columns, (row, column) -> new Place(column, row, 1));
    }

    /** Four rows of ten, every third column half a key lower, and every third again. */
    static Plan staggered() {
        return board("Staggered", 4, 10, (row, column) -> new Place(column, row + (column % 3) * 0.5, 1));
    }

    /** Rows of keys of all widths and gaps. */
    static Plan random(Random random) {
        int rows = 1 + random.nextInt(6);
        int columns = 1 + random.nextInt(12);
        double[] right = new double[rows];
        return board("Random", rows, columns, (row, column) -> {
            double left = right[row] + random.nextInt(3) * 0.25;
            double width = 1 + random.nextInt(5) * 0.25;
            right[row] = left + width;
            return new Place(left, row, width);
        });
    }

    private static Plan board(String name, int rows, int columns, BiFunction<Integer, Integer, Place> place) {
        List<Key> keys = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                String keyName = (char) ('A' + row) + String.valueOf(column + 1);
                keys.add(new Key(keys.size(), keyName, row, rows + column, place.apply(row, column)));
            }
        }
        List<Net> nets = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            int first = row * columns;
            nets.add(net("R" + (row + 1), NetKind.ROW, nets.size(), IntStream.range(first, first + columns)));
        }
        for (int column = 0; column < columns; column++) {
            int first = column;
            nets.add(net(
                    "C" + (column + 1),
                    NetKind.COLUMN,
                    nets.size(),
                    IntStream.range(0, rows).map(row -> row * columns + first)));
        }
        return new Plan(name, Controllers.ATMEGA2560, NetKind.ROW, NetKind.ROW, nets, keys, Optional.empty(), 25);
    }

    private static Net net(String name, NetKind kind, int index, IntStream keys) {
        List<Integer> joints = keys.boxed().toList();
        List<Link> links = IntStream.range(1, joints.size())
                .mapToObj(joint -> new Link(joint - 1, joint, false))
                .toList();
        String pin = Controllers.ATMEGA2560.pins().get(index);
        return new Net(name, kind, pin, joints, links, 0, Optional.empty());
    }

    /** Pressed in reading order up to the selected key. */
    static View view(Plan plan, int selected) {
        Sitting sitting = new Sitting(plan, Circuit.of(plan)).found().quietCheckDone();
        for (int key = 0; key < selected; key++) {
            sitting.press(key);
        }
        return Views.on(selected, Views.view(Views.FULL, sitting.snapshot()));
    }
}
