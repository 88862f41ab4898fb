package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.Layout;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Controllers;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Press;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * How far the posterior after a read-through is from the exact one: for every set of up to two faults, the probability
 * of exactly the presses that came, summed over everything that the fingers of {@link Reader} may have done.
 */
class ReadThroughProofTest {
    private static final int KEYS_A_SLIP = 40;
    private static final double SLIP = 1.0 / KEYS_A_SLIP;
    private static final Priors PRIORS = Priors.judged();
    private static final Plan PLAN = Grids.plain(Controllers.ATMEGA2560, 2, 4);

    @Test
    void the_posterior_is_close_to_the_exact_one() {
        List<Board> boards = Board.all();
        int trials = Campaign.size(30, 1000);
        double sum = 0;
        double largest = 0;
        int far = 0;
        int faults = 0;
        StringBuilder cases = new StringBuilder();
        for (int trial = 0; trial < trials; trial++) {
            Random random = new Random(trial);
            List<Fault> truth = Campaign.likelyFaults(random, PLAN, PRIORS, trial % 3);
            // Slips come more often here than anybody believes, so that most trials have one.
            Session session = new Reader(PLAN, truth).readThrough(Reader.fingers(random, PLAN, 8));
            if (session.presses().isEmpty()) {
                continue;
            }
            Map<Fault, Double> exact = exact(boards, session);
            Map<Fault, Double> computed = Exhaustive.posterior(PLAN, PRIORS, session.evidence(), 2);
            for (Map.Entry<Fault, Double> each : exact.entrySet()) {
                double off = Math.abs(each.getValue() - computed.getOrDefault(each.getKey(), 0.0));
                faults++;
                sum += off;
                largest = Math.max(largest, off);
                if (off > 0.1) {
                    far++;
                    cases.append(String.format(
                            "seed %d %s: %s has %.3f, exactly %.3f%n",
                            trial,
                            Campaign.codes(PLAN, truth),
                            each.getKey().code(PLAN),
                            computed.getOrDefault(each.getKey(), 0.0),
                            each.getValue()));
                }
            }
        }
        System.out.printf(
                "%d read-throughs of 8 keys, a slip in 8: probabilities of %d faults are off by %.5f on average, by %.3f"
                        + " at most; %d by more than 0.1%n%s",
                trials, faults, sum / faults, largest, far, cases);
        assertTrue(sum / faults < 0.01, cases::toString);
    }

    private static Map<Fault, Double> exact(List<Board> boards, Session session) {
        List<Pairs> came = session.presses().stream()
                .filter(press -> !press.pairs().isEmpty())
                .map(Press::pairs)
                .toList();
        PlainModel quiet = new PlainModel(
                PLAN, new Evidence(session.evidence().observations().subList(0, 1)));
        Map<Fault, Double> weights = new HashMap<>();
        double total = 0;
        for (Board board : boards) {
            double weight =
                    Math.exp(board.logPrior() + quiet.quietCost(board.shown().quiet()))
                            * Fingers.of(board.shown().answers(), came).likelihood(0, 0);
            total += weight;
            for (Fault fault : board.faults()) {
                weights.merge(fault, weight, Double::sum);
            }
        }
        double all = total;
        weights.replaceAll((fault, weight) -> weight / all);
        return weights;
    }

    /** A board with none, one or two faults. */
    private record Board(List<Fault> faults, double logPrior, PlainModel.Shown shown) {
        static Board with(Layout layout, Fault... faults) {
            List<Fault> all = List.of(faults);
            return new Board(all, PlainModel.logPrior(PRIORS, all), PlainModel.Shown.by(layout, PLAN, all));
        }

        static List<Board> all() {
            Layout layout = new Layout(PLAN);
            List<Fault> all = Catalogue.of(PLAN);
            List<Board> boards = new ArrayList<>(List.of(with(layout)));
            for (int one = 0; one < all.size(); one++) {
                boards.add(with(layout, all.get(one)));
                for (int two = one + 1; two < all.size(); two++) {
                    if (Collections.disjoint(all.get(one).parts(), all.get(two).parts())) {
                        boards.add(with(layout, all.get(one), all.get(two)));
                    }
                }
            }
            return boards;
        }
    }

    /**
     * The fingers' whole tree of choices, one key after another.
     *
     * @param known what is worked out already, by key and press
     */
    private record Fingers(List<Reading> answers, List<Pairs> came, Map<List<Integer>, Double> known) {
        static Fingers of(List<Reading> answers, List<Pairs> came) {
            return new Fingers(answers, came, new HashMap<>());
        }

        double likelihood(int key, int press) {
            if (key == answers.size()) {
                return press == came.size() ? 1 : 0;
            }
            Double already = known.get(List.of(key, press));
            if (already != null) {
                return already;
            }
            double sum = choices(key, press);
            known.put(List.of(key, press), sum);
            return sum;
        }

        private double choices(int key, int press) {
            double sum = (1 - SLIP) * after(List.of(key), key + 1, press);
            sum += SLIP / 4 * likelihood(key + 1, press);
            sum += SLIP / 4 * after(List.of(key, key), key + 1, press);
            sum += SLIP
                    / 4
                    * (key + 1 < answers.size()
                            ? after(List.of(key + 1, key), key + 2, press)
                            : after(List.of(key), key + 1, press));
            List<Integer> near = Reader.neighbours(PLAN, PLAN.keys().get(key));
            for (int other : near) {
                sum += SLIP / 4 / near.size() * after(List.of(other), key + 1, press);
            }
            return sum;
        }

        /** Of these presses, and of whatever follows from a key's turn on. */
        private double after(List<Integer> pressed, int next, int press) {
            double chance = 1;
            int at = press;
            for (int key : pressed) {
                Reading answer = answers.get(key);
                if (!answer.low().isEmpty() || !answer.between().isEmpty()) {
                    if (at == came.size() || !answer.agreesWith(came.get(at))) {
                        return 0;
                    }
                    chance *= Math.pow(0.5, answer.between().count());
                    at++;
                }
            }
            return chance * likelihood(next, at);
        }
    }
}
