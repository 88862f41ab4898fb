package buzzout.diagnosis;

import buzzout.circuit.Pair;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Beside given faults of nets, the fault in each key that explains it best, or none. */
final class KeysChoice {
    private static final double NOTHING = 1e-9;

    /** What something costs, and the nets of which a fault must reach one to change that. */
    record Burden(long nets, double cost) {}

    private final Case board;
    private final int keys;
    /** For each key, the faults in it that last and let it rise. */
    private final List<int[]> options;

    KeysChoice(Case board) {
        this.board = board;
        keys = board.plan().keys().size();
        options = board.plan().keys().stream()
                .map(key -> board.charges().inKey(key.index()))
                .map(there -> {
                    there.andNot(board.charges().held());
                    there.andNot(board.charges().loose());
                    return there.stream().toArray();
                })
                .toList();
    }

    /** What these faults of nets and the keys' choice weigh, apart from trials. */
    double score(BitSet nets) {
        return new Choice(nets).score;
    }

    /** These faults of nets and the keys' choice. */
    BitSet charged(BitSet nets) {
        return new Choice(nets).charged;
    }

    List<Burden> burdens(BitSet nets) {
        return new Choice(nets).burdens();
    }

    private final class Choice {
        private final Charges charges = board.charges();
        private final Ledger ledger = board.ledger();
        private final BitSet charged;
        private final WiredNets wired;
        private final int[] answers;
        private final double[] paid = new double[keys];
        private final Weights weights;
        private double score;

        Choice(BitSet nets) {
            charged = (BitSet) nets.clone();
            wired = board.forecasts().wired(nets);
            answers = answers();
            weights = board.weights(Forecast.of(wired.quiet(), answers.clone()));
            score = charges.logOdds(nets) + weights.total();
            if (ledger.matchesAnswers()) {
                choose(true); // first those whose answer some key must have given
            }
            choose(false);
        }

        private int[] answers() {
            int[] answers = new int[keys + board.forecasts().trials().size()];
            for (int key = 0; key < keys; key++) {
                answers[key] = wired.answer(key);
            }
            return answers;
        }

        private void choose(boolean onlyWhatCame) {
            for (int key = 0; key < keys; key++) {
                if (paid[key] == 0 && !weights.isPleased(key, answers[key])) {
                    choose(key, onlyWhatCame);
                }
            }
        }

        private void choose(int key, boolean onlyWhatCame) {
            int chosen = -1;
            int instead = 0;
            double most = NOTHING;
            for (int fault : options.get(key)) {
                int answer = wired.answer(key, fault);
                if (answer == answers[key] || (onlyWhatCame && !ledger.came().get(answer))) {
                    continue;
                }
                double gain = charges.logOdds(fault) + weights.ifMoved(key, answers[key], answer);
                if (gain > most) {
                    most = gain;
                    chosen = fault;
                    instead = answer;
                }
            }
            if (chosen >= 0 && charges.canJoin(charged, chosen)) {
                weights.move(key, answers[key], instead);
                answers[key] = instead;
                paid[key] = -charges.logOdds(chosen);
                charged.set(chosen);
                score += most;
            }
        }

        List<Burden> burdens() {
            List<Burden> burdens = new ArrayList<>();
            for (int key = 0; key < keys; key++) {
                double cost = paid[key] - ledger.askedCost(key, answers[key]);
                if (cost > NOTHING) {
                    burdens.add(new Burden(netsOf(key), cost));
                }
            }
            weights.answerCosts().forEach((answer, cost) -> burdens.add(new Burden(netsOfAnswer(answer), -cost)));
            double quiet = -ledger.quietCost(wired.quiet());
            if (quiet > NOTHING) {
                burdens.add(new Burden(-1L, quiet));
            }
            return burdens;
        }

        private long netsOf(int key) {
            long some = nets(board.plan().keys().get(key)) | nets(answers[key]);
            for (int answer : ledger.meant(key)) {
                some |= nets(answer);
            }
            return some;
        }

        private long netsOfAnswer(int answer) {
            long some = nets(answer);
            for (Key key : board.plan().keys()) {
                some |= answers[key.index()] == answer ? nets(key) : 0;
            }
            return some;
        }
    }

    private static long nets(Key key) {
        return 1L << key.row() | 1L << key.column();
    }

    private long nets(int answer) {
        Reading reading = board.readings().reading(answer);
        long nets = 0;
        for (Pair pair : reading.low().plus(reading.between()).list()) {
            nets |= 1L << pair.low() | 1L << pair.reads();
        }
        return nets;
    }
}
