package buzzout.session;

import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What came in a read-through beside what the board should have answered.
 *
 * <p>First that is a sound board. Then one fault after another of those that concern several keys is supposed, such as a
 * row that is open, two columns bridged, leads swapped or the whole board mirrored: each time the one that makes the
 * best alignment most probable, as long as that outweighs one more fault. Faults in single keys do not shift the rest.
 */
final class Explained {
    /** One certain fault more; judgement. */
    private static final double ONE_MORE = Math.log(1e-3);

    private static final int MOST_FAULTS = 4;

    private final Plan plan;
    private final List<Pairs> came;
    private final Map<Reading, double[]> answered = new HashMap<>();

    Explained(Plan plan, List<Pairs> came) {
        this.plan = plan;
        this.came = came;
    }

    /** Under the board that explains best. */
    Alignment alignment() {
        Supposed best = Supposed.sound(plan);
        double bestScore = best(best);
        for (int faults = 0; faults < MOST_FAULTS; faults++) {
            List<Key> odd = odd(best);
            Optional<Scored> next = best.withOneMore(plan, odd)
                    .map(more -> new Scored(more, best(more)))
                    .max(java.util.Comparator.comparingDouble(Scored::score));
            if (next.isEmpty() || next.get().score() + ONE_MORE <= bestScore) {
                break;
            }
            best = next.get().board();
            bestScore = next.get().score();
        }
        return Alignment.of(plan.keys().size(), came.size(), scores(best));
    }

    private record Scored(Supposed board, double score) {}

    private double best(Supposed board) {
        return Alignment.best(plan.keys().size(), came.size(), scores(board));
    }

    /** The keys that did not, or not clearly, answer at their turn as this board should. */
    private List<Key> odd(Supposed board) {
        Alignment alignment = Alignment.of(plan.keys().size(), came.size(), scores(board));
        return plan.keys().stream()
                .filter(key -> {
                    Reading expected = board.answers().get(key.index());
                    double right = 0;
                    for (int press = 0; press < came.size(); press++) {
                        if (expected.agreesWith(came.get(press))) {
                            right += alignment.matchedInOrder(key.index(), press);
                        }
                    }
                    return right < 0.5;
                })
                .toList();
    }

    private Alignment.Scores scores(Supposed board) {
        double[][] match = board.answers().stream()
                .map(expected -> answered.computeIfAbsent(expected, this::answers))
                .toArray(double[][]::new);
        double[] nothing =
                board.answers().stream().mapToDouble(ReadingSlips::nothing).toArray();
        return new Alignment.Scores() {
            @Override
            public double match(int key, int press) {
                return match[key][press];
            }

            @Override
            public double leftOut(int key) {
                return nothing[key];
            }

            @Override
            public double extra(int press) {
                return ReadingSlips.extra(press > 0 && came.get(press).equals(came.get(press - 1)));
            }

            @Override
            public double swapped(int key, int press) {
                return ReadingSlips.EXCHANGED + match[key][press + 1] + match[key + 1][press];
            }
        };
    }

    private double[] answers(Reading expected) {
        return came.stream()
                .mapToDouble(answer -> ReadingSlips.answer(expected, answer))
                .toArray();
    }
}
