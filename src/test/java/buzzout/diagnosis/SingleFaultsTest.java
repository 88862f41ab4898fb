package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.FaultKind;
import buzzout.circuit.Layout;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every single fault of the catalogue is found, together with exactly those that the evidence cannot tell from it.
 *
 * <p>What each fault shows is asked of the circuit here, and weighed by the definition, apart from the engine. After a
 * roll call the one finding lists exactly the faults whose quiet sweep and answers are the same as the true one's; all
 * of them are within the engine's threshold, as the priors of single faults differ by less than 1 in 1000. In free play
 * no key is named, and a dead key with a key pressed twice may be likelier than the truth: there the one finding lists
 * exactly the faults that are as likely as the most probable one, and the truth is named too, if as less likely. What
 * shows nothing yields no finding. A pin that cannot rise is tried where its level always reads low; then nothing
 * distinguishes it from a pin that is held low, and that is what is named.
 */
class SingleFaultsTest {
    private static final long SEED = 3;
    private static final Priors PRIORS = Priors.judged();

    /** @param oneIn of so many faults, one is tried where the campaign is not full */
    record Board(String name, Plan plan, int oneIn) {
        Set<String> codes(List<Fault> faults) {
            return faults.stream().map(fault -> fault.code(plan)).collect(Collectors.toCollection(TreeSet::new));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Board> boards() {
        Board quayside = new Board("Quayside 46", ExamplePlan.quayside(), 1);
        if (Campaign.isBrief()) {
            return Stream.of(quayside);
        }
        return Stream.of(
                quayside,
                new Board("5x12 with holes and branches", Grids.branching5x12(), 10),
                new Board("8x16", Grids.plain8x16(), 20));
    }

    @ParameterizedTest
    @MethodSource("boards")
    void a_roll_call_names_every_single_fault_and_what_shows_the_same(Board board) {
        check(board, "roll call", shown -> rollCall(board.plan(), shown), (trial, wrong) -> {
            boolean lowForGood = trial.truth().kind() == FaultKind.PIN_DRAGGED;
            if (lowForGood
                    ? !trial.suspects().equals(trial.best())
                    : !trial.suspects().equals(trial.alike())) {
                wrong.add(trial + ", should be " + trial.alike());
            }
        });
    }

    @ParameterizedTest
    @MethodSource("boards")
    void free_play_names_every_single_fault_that_shows_in_it(Board board) {
        check(board, "free play", SingleFaultsTest::freePlay, (trial, wrong) -> {
            if (!trial.suspects().equals(trial.best())) {
                wrong.add(trial + ", should be " + trial.best());
            } else if (!trial.best().isEmpty() && trial.probability() > 0.01 && !trial.namesTruth()) {
                wrong.add(trial + " and leaves out the truth, which has " + trial.probability());
            }
        });
    }

    /**
     * One fault's evidence, weighed.
     *
     * @param alike the codes of all that show the same
     * @param best the codes of all that are as likely as the most probable fault, none where a sound board is likelier
     * @param probability how probable the truth is among single faults
     */
    record Trial(
            Board board, Fault truth, Set<String> alike, Set<String> best, double probability, Diagnosis diagnosis) {
        Set<String> suspects() {
            return diagnosis.findings().isEmpty()
                    ? Set.of()
                    : board.codes(diagnosis.findings().get(0).suspects().stream()
                            .map(Suspect::fault)
                            .toList());
        }

        boolean namesTruth() {
            return diagnosis.findings().stream()
                    .flatMap(finding -> Stream.concat(finding.suspects().stream(), finding.otherwise().stream()))
                    .anyMatch(suspect -> suspect.fault().equals(truth));
        }

        @Override
        public String toString() {
            return truth.code(board.plan()) + " is found as " + suspects() + " among "
                    + diagnosis.findings().size();
        }
    }

    private static void check(
            Board board,
            String way,
            Function<PlainModel.Shown, Evidence> evidenceOf,
            BiConsumer<Trial, List<String>> judge) {
        Plan plan = board.plan();
        Layout layout = new Layout(plan);
        PlainModel.Shown sound = PlainModel.Shown.by(layout, plan, List.of());
        List<Fault> faults = Catalogue.of(plan).stream()
                .filter(fault -> fault.kind() != FaultKind.COMES_AND_GOES) // A single roll call does not show them.
                .toList();
        List<PlainModel.Shown> shownBy = faults.stream()
                .map(fault -> PlainModel.Shown.by(layout, plan, List.of(fault)))
                .toList();
        List<PlainModel.Shown> distinct = shownBy.stream().distinct().toList();
        int[] shows = shownBy.stream().mapToInt(distinct::indexOf).toArray();
        List<String> wrong = new ArrayList<>();
        int several = 0;
        List<Integer> tried = tried(board, faults.size());
        for (int truth : tried) {
            Evidence evidence = evidenceOf.apply(shownBy.get(truth));
            PlainModel model = new PlainModel(plan, evidence);
            double[] ofShown =
                    distinct.stream().mapToDouble(model::logLikelihood).toArray();
            double[] scores = IntStream.range(0, faults.size())
                    .mapToDouble(at ->
                            ofShown[shows[at]] + PRIORS.logOdds(faults.get(at).kind()))
                    .toArray();
            int most = IntStream.range(0, faults.size())
                    .boxed()
                    .max(Comparator.comparingDouble(at -> scores[at]))
                    .orElseThrow();
            boolean isLikelierThanSound = scores[most] > model.logLikelihood(sound);
            Trial trial = new Trial(
                    board,
                    faults.get(truth),
                    board.codes(which(faults, at -> shows[at] == shows[truth])),
                    isLikelierThanSound
                            ? board.codes(which(
                                    faults, at -> Math.abs(ofShown[shows[at]] - ofShown[shows[most]]) < 1e-9))
                            : Set.of(),
                    Math.exp(scores[truth])
                            / Arrays.stream(scores).map(Math::exp).sum(),
                    new Engine(plan).weigh(evidence));
            several += trial.diagnosis().findings().size() > 1 ? 1 : 0;
            judge.accept(trial, wrong);
        }
        System.out.printf(
                "%-28s %s: %d of %d single faults (seed %d), %d with more than one finding, %d wrong%n",
                board, way, tried.size(), faults.size(), SEED, several, wrong.size());
        assertTrue(tried.size() > 50);
        assertEquals(0, several);
        assertEquals(List.of(), wrong, () -> String.join("\n", wrong));
    }

    private static List<Integer> tried(Board board, int faults) {
        List<Integer> all = new ArrayList<>(IntStream.range(0, faults).boxed().toList());
        Collections.shuffle(all, new Random(SEED));
        return all.subList(0, Campaign.size(faults / board.oneIn(), faults));
    }

    private static List<Fault> which(List<Fault> faults, IntPredicate are) {
        return IntStream.range(0, faults.size())
                .filter(are)
                .mapToObj(faults::get)
                .toList();
    }

    private static Evidence rollCall(Plan plan, PlainModel.Shown shown) {
        List<Observation> observations = new ArrayList<>();
        Pairs quiet = lowest(shown.quiet());
        observations.add(new Observation(new Hands.Off(), quiet));
        plan.keys()
                .forEach(key -> observations.add(new Observation(
                        new Hands.Meant(key.index()),
                        quiet.plus(lowest(shown.answers().get(key.index()))))));
        return new Evidence(observations);
    }

    private static Evidence freePlay(PlainModel.Shown shown) {
        List<Observation> observations = new ArrayList<>();
        Pairs quiet = lowest(shown.quiet());
        observations.add(new Observation(new Hands.Off(), quiet));
        for (Reading answer : shown.answers()) {
            Pairs seen = lowest(answer);
            if (!seen.minus(quiet).isEmpty()) {
                observations.add(new Observation(new Hands.SomeKey(), quiet.plus(seen)));
            }
        }
        observations.add(new Observation(new Hands.EveryKey(), quiet));
        return new Evidence(observations);
    }

    /** Every doubtful level reads low. */
    private static Pairs lowest(Reading reading) {
        return reading.low().plus(reading.between());
    }
}
