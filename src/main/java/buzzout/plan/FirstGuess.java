package buzzout.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A plan to begin learning from, where only the layout and the pins are known: its rows and columns are made up, so that
 * every pin is probed and every key has a crossing. Each net is called as its pin, which says that it is made up.
 */
final class FirstGuess {
    private FirstGuess() {}

    /** Why so many keys cannot be learnt on so many pins, as a clause; nothing where they can. */
    static Optional<String> obstacle(int keys, int pins) {
        if (pins > Plan.MOST_NETS) {
            return Optional.of("there are " + pins + " pins; " + Plan.MOST_NETS + " is the most");
        }
        if (pins < 2 || rows(keys, pins).isEmpty()) {
            return Optional.of(keys + (keys == 1 ? " key" : " keys") + " on " + pins
                    + " pins cannot be a matrix; name in" + " pins = \"...\" those that are wired");
        }
        return Optional.empty();
    }

    /** How many of the pins to call rows, so that each net has a key and each key a crossing of its own. */
    private static Optional<Integer> rows(int keys, int pins) {
        return IntStream.rangeClosed(1, pins / 2)
                .map(row -> pins / 2 + 1 - row)
                .boxed()
                .filter(rows -> (long) rows * (pins - rows) >= keys && keys >= pins - rows)
                .findFirst();
    }

    /** @param places of the keys in reading order */
    static Plan of(
            String name,
            Controller controller,
            List<String> pins,
            Optional<String> spare,
            double bounceLimitMillis,
            Map<String, Place> places) {
        int rows = rows(places.size(), pins.size()).orElseThrow();
        int columns = pins.size() - rows;
        List<Key> keys = new ArrayList<>();
        Map<Integer, List<Integer>> onNet = new LinkedHashMap<>();
        pins.forEach(pin -> onNet.put(onNet.size(), new ArrayList<>()));
        places.forEach((key, place) -> {
            // Down the diagonals, each begun one column further on, so that all nets are met and no crossing twice.
            int index = keys.size();
            int row = index % rows;
            int column = (index + index / leastCommonMultiple(rows, columns)) % columns;
            keys.add(new Key(index, key, row, rows + column, place));
            onNet.getOrDefault(row, new ArrayList<>()).add(index);
            onNet.getOrDefault(rows + column, new ArrayList<>()).add(index);
        });
        List<Net> nets = new ArrayList<>();
        onNet.forEach((net, joints) -> nets.add(new Net(
                pins.get(net),
                net < rows ? NetKind.ROW : NetKind.COLUMN,
                pins.get(net),
                joints,
                IntStream.range(1, joints.size())
                        .mapToObj(joint -> new Link(joint - 1, joint, false))
                        .toList(),
                0,
                Optional.empty())));
        return new Plan(name, controller, NetKind.ROW, NetKind.ROW, nets, keys, spare, bounceLimitMillis);
    }

    private static int leastCommonMultiple(int one, int other) {
        int multiple = one;
        while (multiple % other != 0) {
            multiple += one;
        }
        return multiple;
    }
}
