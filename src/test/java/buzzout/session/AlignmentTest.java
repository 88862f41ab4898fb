package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AlignmentTest {
    /** So much apart, sums over all alignments are sums over the best ones but for rounding. */
    private static final double APART = 100;

    /** Letters as items: points for a match, a mismatch, a gap on either side; no exchanges. */
    private record Letters(String expected, String came, double match, double mismatch, double gap)
            implements Alignment.Scores {
        @Override
        public double match(int i, int j) {
            return APART * (expected.charAt(i) == came.charAt(j) ? match : mismatch);
        }

        @Override
        public double leftOut(int i) {
            return APART * gap;
        }

        @Override
        public double extra(int j) {
            return APART * gap;
        }

        @Override
        public double swapped(int i, int j) {
            return Double.NEGATIVE_INFINITY;
        }

        double best() {
            return Alignment.best(expected.length(), came.length(), this) / APART;
        }

        long howMany() {
            double total = Alignment.of(expected.length(), came.length(), this).total();
            return Math.round(Math.exp(total - APART * best()));
        }
    }

    /** Score 0 and three best alignments at +1, -1, -1: computed by brute force for CHECKS.md, section 7. */
    @Test
    void needleman_and_wunschs_example_has_score_0_and_three_best_alignments() {
        Letters letters = new Letters("GATTACA", "GCATGCG", 1, -1, -1);
        assertEquals(0, letters.best());
        assertEquals(3, letters.howMany());
    }

    /** Rosetta Code, "Levenshtein distance" (found; CHECKS.md, section 7). */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "rosettacode, raisethysword, 8"})
    void levenshteins_distance_is_as_published(String one, String other, int distance) {
        assertEquals(-distance, new Letters(one, other, 0, -1, -1).best());
        assertEquals(-distance, new Letters(other, one, 0, -1, -1).best());
    }

    /** Every alignment written out one by one, on sequences so short that there are few. */
    @Test
    void totals_and_shares_equal_those_of_all_alignments_one_by_one() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            int expected = random.nextInt(5);
            int came = random.nextInt(5);
            Alignment.Scores scores = anyScores(random);
            Alignment alignment = Alignment.of(expected, came, scores);
            double[][] matched = new double[expected][came];
            double all = everyWay(scores, expected, came, 0, 0, 1, new int[expected], matched);
            assertEquals(Math.log(all), alignment.total(), 1e-9, "seed " + seed);
            for (int i = 0; i < expected; i++) {
                for (int j = 0; j < came; j++) {
                    assertEquals(matched[i][j] / all, alignment.matched(i, j), 1e-9, "seed " + seed);
                }
            }
        }
    }

    private static final int NONE = -1;

    /** Adds up the weights of all ways to go on from here; those of whole ways to the cells that they match. */
    private static double everyWay(
            Alignment.Scores scores, int n, int m, int i, int j, double weight, int[] as, double[][] matched) {
        if (i == n && j == m) {
            for (int item = 0; item < n; item++) {
                if (as[item] != NONE) {
                    matched[item][as[item]] += weight;
                }
            }
            return weight;
        }
        double sum = 0;
        if (i < n) {
            as[i] = NONE;
            sum += everyWay(scores, n, m, i + 1, j, weight * Math.exp(scores.leftOut(i)), as, matched);
        }
        if (j < m) {
            sum += everyWay(scores, n, m, i, j + 1, weight * Math.exp(scores.extra(j)), as, matched);
        }
        if (i < n && j < m) {
            as[i] = j;
            sum += everyWay(scores, n, m, i + 1, j + 1, weight * Math.exp(scores.match(i, j)), as, matched);
        }
        if (i + 1 < n && j + 1 < m) {
            as[i] = j + 1;
            as[i + 1] = j;
            sum += everyWay(scores, n, m, i + 2, j + 2, weight * Math.exp(scores.swapped(i, j)), as, matched);
        }
        return sum;
    }

    private static Alignment.Scores anyScores(Random random) {
        double[] any = random.doubles(64, -4, 0).toArray();
        return new Alignment.Scores() {
            @Override
            public double match(int i, int j) {
                return any[8 * i + j];
            }

            @Override
            public double leftOut(int i) {
                return any[40 + i];
            }

            @Override
            public double extra(int j) {
                return any[48 + j];
            }

            @Override
            public double swapped(int i, int j) {
                return any[32 + i] + any[56 + j];
            }
        };
    }
}
