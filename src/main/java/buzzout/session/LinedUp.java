package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A read-through's presses lined up with the keys. */
final class LinedUp {
    /** A key's answer counts as known when it is the same in this share of all alignments. */
    private static final double CLEAR = 0.85;

    private final Plan plan;
    private final List<Press> came;
    private final Alignment alignment;
    private final List<Press> read;
    private final BitSet taken = new BitSet();

    private LinedUp(Plan plan, List<Press> came) {
        this.plan = plan;
        this.came = came;
        alignment = new Explained(plan, came.stream().map(Press::pairs).toList()).alignment();
        read = new ArrayList<>(came);
    }

    /**
     * The same presses, those whose key is clear marked with it, after one gap for each key that clearly gave nothing.
     * Where it is not clear which of several keys gave an answer, its press stays one of some key.
     */
    static List<Press> presses(Plan plan, List<Press> belonging, long atMillis) {
        List<Press> came =
                belonging.stream().filter(press -> !press.pairs().isEmpty()).toList();
        LinedUp linedUp = new LinedUp(plan, came);
        List<Press> all = new ArrayList<>();
        for (Key key : plan.keys()) {
            if (linedUp.place(key.index())) {
                all.add(Press.nothingRead(atMillis, key.index()));
            }
        }
        belonging.stream().filter(press -> press.pairs().isEmpty()).forEach(all::add);
        linedUp.placeRepeats();
        all.addAll(linedUp.read);
        return all;
    }

    /** Marks the press that clearly is this key's, if any; whether clearly none is. */
    private boolean place(int key) {
        Map<Pairs, Double> shares = new HashMap<>();
        double nothing = 1;
        for (int press = 0; press < came.size(); press++) {
            double share = alignment.matched(key, press);
            shares.merge(came.get(press).pairs(), share, Double::sum);
            nothing -= share;
        }
        shares.forEach((answer, share) -> {
            if (share >= CLEAR) {
                IntStream.range(0, came.size())
                        .filter(press ->
                                !taken.get(press) && came.get(press).pairs().equals(answer))
                        .boxed()
                        .max(java.util.Comparator.comparingDouble(press -> alignment.matched(key, press)))
                        .ifPresent(press -> {
                            taken.set(press);
                            read.set(press, came.get(press).readAs(key));
                        });
            }
        });
        return nothing >= CLEAR;
    }

    /** A press that is nobody's turn and repeats the one before is the same key's. */
    private void placeRepeats() {
        for (int press = 1; press < came.size(); press++) {
            Press before = read.get(press - 1);
            int repeat = press;
            double turn = IntStream.range(0, plan.keys().size())
                    .mapToDouble(key -> alignment.matched(key, repeat))
                    .sum();
            if (!taken.get(press)
                    && turn < 0.5
                    && before.read()
                    && before.pairs().equals(came.get(press).pairs())) {
                read.set(press, came.get(press).readAs(before.presumed().orElseThrow()));
            }
        }
    }
}
