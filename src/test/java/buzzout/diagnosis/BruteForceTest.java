package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Fault;
import buzzout.plan.Controller;
import buzzout.plan.Controllers;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * On small boards, every set of faults is weighed by plain enumeration, and compared.
 *
 * <p>Sets of up to three faults on boards of up to four keys, of two on the larger ones; in the full campaign of three
 * everywhere. The evidence comes from boards with none to three faults, in every way of {@link SeededEvidence.Way}.
 */
class BruteForceTest {
    private static final Priors PRIORS = Priors.judged();

    /** @param mostFaults in the sets enumerated */
    record Board(String name, Plan plan, int mostFaults, int pieces, long seed) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Board> boards() {
        Stream.Builder<Board> boards = Stream.builder();
        for (int rows = 1; rows <= (Campaign.isBrief() ? 2 : 3); rows++) {
            for (int columns = 2; columns <= (Campaign.isBrief() ? 2 : 4); columns++) {
                boards.add(board(rows, columns, "", Controllers.ATMEGA32U4, Grids::plain));
            }
        }
        boards.add(board(2, 2, ", two sure diodes", Controllers.ATMEGA2560, Grids::plain));
        boards.add(board(2, 3, ", stripes to the columns", Controllers.ATMEGA32U4, Grids::turned));
        return boards.build();
    }

    private interface Build {
        Plan plan(Controller controller, int rows, int columns);
    }

    private static Board board(int rows, int columns, String suffix, Controller controller, Build build) {
        boolean small = rows * columns <= 4;
        int pieces = small ? Campaign.size(40, 1000) : Campaign.size(10, 200);
        return new Board(
                rows + "x" + columns + suffix,
                build.plan(controller, rows, columns),
                Campaign.isFull() || small ? 3 : 2,
                pieces,
                100L * rows + columns + suffix.length());
    }

    @ParameterizedTest
    @MethodSource("boards")
    void every_posterior_probability_equals_plain_enumeration(Board board) {
        PlainEnumeration plain = new PlainEnumeration(board.plan(), PRIORS, board.mostFaults());
        double worst = eachPiece(board, 3, (piece, about) -> {
            Map<Fault, Double> expected = plain.weigh(piece.evidence()).posterior();
            Map<Fault, Double> exact = Exhaustive.posterior(board.plan(), PRIORS, piece.evidence(), board.mostFaults());
            assertEquals(expected.keySet(), exact.keySet());
            double largest = 0;
            for (Map.Entry<Fault, Double> each : expected.entrySet()) {
                double computed = exact.getOrDefault(each.getKey(), Double.NaN);
                double difference = Math.abs(computed - each.getValue()) / each.getValue();
                assertTrue(
                        difference <= 1e-9,
                        () -> about + ": " + each.getKey().code(board.plan()) + " should have " + each.getValue()
                                + ", has " + computed);
                largest = Math.max(largest, difference);
            }
            return largest;
        });
        System.out.printf(
                "%-28s %8d sets of up to %d, %4d pieces of evidence: relative difference up to %.1e%n",
                board, plain.sets(), board.mostFaults(), board.pieces(), worst);
    }

    /**
     * Nothing is left to chance on boards as small as these: no explanation is less probable than the best set, and no
     * finding's probability is off by more than what sets of more faults than those enumerated here may weigh.
     */
    @Test
    void the_live_engine_comes_close_to_plain_enumeration() {
        Closeness closeness = new Closeness();
        boards().forEach(board -> {
            PlainEnumeration plain = new PlainEnumeration(board.plan(), PRIORS, board.mostFaults());
            eachPiece(board, board.mostFaults() - 1, (piece, about) -> {
                Engine engine = new Engine(board.plan());
                Diagnosis diagnosis = engine.weigh(piece.evidence());
                closeness.add(board, piece, about, plain.weigh(piece.evidence()), diagnosis, engine.explanation());
                return 0.0;
            });
        });
        System.out.println(closeness);
        assertEquals(0, closeness.missed, closeness::toString);
        assertTrue((Campaign.isBrief() || closeness.findings > 80) && closeness.largest <= 0.001, closeness::toString);
    }

    /** How close the engine came, over many pieces of evidence. */
    private static final class Closeness {
        private final StringBuilder cases = new StringBuilder();
        private int pieces;
        private int missed;
        private int findings;
        private double largest;
        private double sum;

        void add(
                Board board,
                Piece piece,
                String about,
                PlainEnumeration.Weighed exact,
                Diagnosis diagnosis,
                List<Fault> explanation) {
            pieces++;
            double lacks = exact.best() - PlainModel.score(board.plan(), PRIORS, piece.evidence(), explanation);
            if (lacks > 1e-6) {
                missed++;
                cases.append(String.format(
                        "missed by %.2f: %s: has %s, best is %s%n",
                        lacks,
                        about,
                        Campaign.codes(board.plan(), explanation),
                        Campaign.codes(board.plan(), exact.bestSet())));
            }
            if (explanation.size() >= board.mostFaults()) {
                return; // The enumeration ends too early to compare with.
            }
            for (Finding finding : diagnosis.findings()) {
                double probability = exact.ofAny(
                        finding.suspects().stream().map(Suspect::fault).toList());
                double difference = Math.abs(probability - finding.probability());
                findings++;
                sum += difference;
                largest = Math.max(largest, difference);
                if (difference > 0.001) {
                    cases.append(String.format(
                            "%s: the finding of %s has %.4f, should have %.4f%n",
                            about, finding.first().fault().code(board.plan()), finding.probability(), probability));
                }
            }
        }

        @Override
        public String toString() {
            return cases
                    + String.format(
                            "%d of %d explanations missed the most probable set; %d findings' probabilities are off by"
                                    + " %.1e on average, by %.1e at most",
                            missed, pieces, findings, sum / findings, largest);
        }
    }

    record Piece(SeededEvidence.Way way, Evidence evidence) {}

    private static double eachPiece(Board board, int mostTrue, BiFunction<Piece, String, Double> check) {
        double worst = 0;
        SeededEvidence.Way[] ways = SeededEvidence.Way.values();
        for (int piece = 0; piece < board.pieces(); piece++) {
            long seed = board.seed() * 10_000 + piece;
            Random random = new Random(seed);
            List<Fault> truth = Campaign.anyFaults(random, board.plan(), random.nextInt(mostTrue + 1));
            SeededEvidence.Way way = ways[piece % ways.length];
            Evidence evidence = SeededEvidence.of(random, board.plan(), truth, way);
            String about = board + ", seed " + seed + ", " + way + ", " + Campaign.codes(board.plan(), truth);
            worst = Math.max(worst, check.apply(new Piece(way, evidence), about));
        }
        return worst;
    }
}
