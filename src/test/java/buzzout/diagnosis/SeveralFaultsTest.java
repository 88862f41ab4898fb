package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Fault;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Boards with several faults, drawn by the priors: the explanation that is reported is never less probable than the
 * truth, as weighed by the definition apart from the engine.
 *
 * <p>A fault counts as named when it is a suspect of some finding; a good part as accused when a finding's first suspect
 * has a probability of ½ or more and is not true.
 */
class SeveralFaultsTest {
    private static final Priors PRIORS = Priors.judged();
    private static final List<Plan> PLANS = List.of(ExamplePlan.quayside(), Grids.branching5x12(), Grids.keys75());

    /** How each key gets pressed. */
    enum Way {
        ROLL_CALL,
        FREE_PLAY
    }

    record Trials(int faults, Way way) {
        @Override
        public String toString() {
            return faults + " faults, " + way;
        }
    }

    static Stream<Trials> trials() {
        return Stream.of(2, 3, 5, 8).flatMap(faults -> Stream.of(Way.values()).map(way -> new Trials(faults, way)));
    }

    @ParameterizedTest
    @MethodSource("trials")
    void no_explanation_is_less_probable_than_the_truth(Trials trials) {
        Tally tally = new Tally();
        // In free play each answer may be any key's, so a tangle of faults takes seconds.
        boolean tangled = trials.way() == Way.FREE_PLAY && trials.faults() > 3;
        int boards = Campaign.size(tangled ? 3 : 12, 1000);
        for (int board = 0; board < boards; board++) {
            Board drawn = new Board(trials, 1000L * board + 10L * trials.faults());
            Engine engine = new Engine(drawn.plan);
            tally.add(engine.weigh(drawn.evidence), new HashSet<>(drawn.truth));
            if (drawn.lacking(engine) > 1e-6) {
                tally.beaten.add(drawn.told(engine));
            }
        }
        System.out.printf("%d boards with %s (seeds 1000 n + %d): %s%n", boards, trials, 10 * trials.faults(), tally);
        assertEquals(boards, tally.boards);
        assertTrue(tally.beaten.isEmpty(), () -> String.join("\n", tally.beaten));
    }

    /** Boards of the campaign on which a bridge or a swap once passed as mere repeats. */
    @ParameterizedTest
    @ValueSource(longs = {271_020, 379_020, 544_020, 805_020, 969_020})
    void a_fault_of_nets_is_found_in_free_play_though_no_press_alone_needs_it(long seed) {
        truthIsNotBeaten(new Trials(2, Way.FREE_PLAY), seed);
    }

    /** Boards of the campaign that were once explained by one fault or two which hid better ones. */
    @Tag("seconds-each")
    @ParameterizedTest
    @CsvSource({
        "3, FREE_PLAY, 115030",
        "3, FREE_PLAY, 414030",
        "3, FREE_PLAY, 794030",
        "5, FREE_PLAY, 204050",
        "5, FREE_PLAY, 557050",
        "5, ROLL_CALL, 293050",
        "5, ROLL_CALL, 759050",
        "5, FREE_PLAY, 257050",
        "8, ROLL_CALL, 511080",
        "8, ROLL_CALL, 771080",
        "8, ROLL_CALL, 815080",
        "8, ROLL_CALL, 917080",
        "8, FREE_PLAY, 95080",
        "8, FREE_PLAY, 640080"
    })
    void faults_are_exchanged_for_others_where_that_explains_better(int faults, Way way, long seed) {
        truthIsNotBeaten(new Trials(faults, way), seed);
    }

    private static void truthIsNotBeaten(Trials trials, long seed) {
        Board board = new Board(trials, seed);
        Engine engine = new Engine(board.plan);
        engine.weigh(board.evidence);
        assertEquals(0, board.lacking(engine), 1e-6, () -> board.told(engine));
    }

    /** A board of a campaign, and what its person found out. */
    private static final class Board {
        private final Trials trials;
        private final long seed;
        private final Plan plan;
        private final List<Fault> truth;
        private final Evidence evidence;

        Board(Trials trials, long seed) {
            this.trials = trials;
            this.seed = seed;
            plan = PLANS.get((int) (seed / 1000 % PLANS.size()));
            truth = Campaign.likelyFaults(new Random(seed), plan, PRIORS, trials.faults());
            evidence = trials.way() == Way.ROLL_CALL ? RollCall.complete(plan, truth) : RollCall.freePlay(plan, truth);
        }

        /** The logarithm of how much more probable the truth is than the explanation, if it is. */
        double lacking(Engine engine) {
            return Math.max(
                    0,
                    PlainModel.score(plan, PRIORS, evidence, truth)
                            - PlainModel.score(plan, PRIORS, evidence, engine.explanation()));
        }

        String told(Engine engine) {
            return String.format(
                    "%s, seed %d on %s: the truth %s is more probable by e^%.2f than %s",
                    trials,
                    seed,
                    plan.name(),
                    Campaign.codes(plan, truth),
                    lacking(engine),
                    Campaign.codes(plan, engine.explanation()));
        }
    }

    /** What became of the true faults. */
    private static final class Tally {
        private final List<String> beaten = new ArrayList<>();
        private int boards;
        private int faults;
        private int named;
        private int allNamed;
        private int accusing;
        private int findings;
        private int sure;
        private int sureAndRight;

        void add(Diagnosis diagnosis, Set<Fault> truth) {
            boards++;
            faults += truth.size();
            long found = truth.stream()
                    .filter(fault -> diagnosis.findings().stream().anyMatch(finding -> names(finding, Set.of(fault))))
                    .count();
            named += (int) found;
            allNamed += found == truth.size() ? 1 : 0;
            for (Finding finding : diagnosis.findings()) {
                findings++;
                if (finding.first().probability() >= 0.5
                        && !truth.contains(finding.first().fault())) {
                    accusing++;
                }
                if (finding.probability() >= 0.9) {
                    sure++;
                    sureAndRight += names(finding, truth) ? 1 : 0;
                }
            }
        }

        private static boolean names(Finding finding, Set<Fault> any) {
            return finding.suspects().stream().map(Suspect::fault).anyMatch(any::contains);
        }

        @Override
        public String toString() {
            return String.format(
                    "%.1f %% of the faults named, all of them on %.1f %% of the boards; %d of %d findings accuse a good"
                            + " part; of %d given 0.9 or more, %.1f %% are right; %d explanations less probable than"
                            + " the truth",
                    100.0 * named / faults,
                    100.0 * allNamed / boards,
                    accusing,
                    findings,
                    sure,
                    100.0 * sureAndRight / Math.max(1, sure),
                    beaten.size());
        }
    }
}
