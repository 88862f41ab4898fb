package buzzout.session;

import java.util.function.DoubleBinaryOperator;

/**
 * All ways of lining a sequence up with an expected one, weighed together.
 *
 * <p>Global alignment after Needleman and Wunsch (1970), with the exchange of two neighbours as a step of its own after
 * Damerau (1964); summed over every alignment, forwards and backwards, as pair hidden Markov models are (Durbin et al.,
 * 1998). All three from memory. With n expected items and m that came it takes O(n·m) time and room.
 */
final class Alignment {
    /** Logarithms of probabilities, or any scores that add up; items by index. Negative infinity rules a step out. */
    interface Scores {
        /** The expected item came as this one. */
        double match(int expected, int came);

        /** The expected item did not come. */
        double leftOut(int expected);

        /** What came stands for no expected item. */
        double extra(int came);

        /** The expected item and the next came the other way about, as {@code came + 1} and {@code came}. */
        double swapped(int expected, int came);
    }

    /** Beyond this the smaller of two terms no longer changes a sum in double precision. */
    private static final double NEGLIGIBLE = 40;

    private final int expected;
    private final int came;
    private final Scores scores;
    private final double[][] before;
    private final double[][] after;

    private Alignment(int expected, int came, Scores scores) {
        this.expected = expected;
        this.came = came;
        this.scores = scores;
        before = before(expected, came, scores, Alignment::logSum);
        after = after();
    }

    static Alignment of(int expected, int came, Scores scores) {
        return new Alignment(expected, came, scores);
    }

    /** The score of the best alignment alone. */
    static double best(int expected, int came, Scores scores) {
        return before(expected, came, scores, Math::max)[expected][came];
    }

    /** The logarithm of the sum over all alignments of the exponentials of their scores. */
    double total() {
        return before[expected][came];
    }

    /** The share of all alignments, by weight, in which this expected item came as that one. */
    double matched(int item, int as) {
        double sum = matchedInOrder(item, as);
        if (item + 1 < expected && as > 0) {
            sum += step(item, as - 1, 2, 2, scores.swapped(item, as - 1));
        }
        if (item > 0 && as + 1 < came) {
            sum += step(item - 1, as, 2, 2, scores.swapped(item - 1, as));
        }
        return sum;
    }

    /** The same, exchanges with a neighbour left out. */
    double matchedInOrder(int item, int as) {
        return step(item, as, 1, 1, scores.match(item, as));
    }

    /** The share of alignments that take one step, from so many items on either side and over so many more. */
    private double step(int items, int comers, int overItems, int overComers, double score) {
        return Math.exp(before[items][comers] + score + after[items + overItems][comers + overComers] - total());
    }

    private static double[][] before(int expected, int came, Scores scores, DoubleBinaryOperator plus) {
        double[][] sum = new double[expected + 1][came + 1];
        for (int i = 0; i <= expected; i++) {
            for (int j = 0; j <= came; j++) {
                double cell = i == 0 && j == 0 ? 0 : Double.NEGATIVE_INFINITY;
                if (i > 0) {
                    cell = plus.applyAsDouble(cell, sum[i - 1][j] + scores.leftOut(i - 1));
                }
                if (j > 0) {
                    cell = plus.applyAsDouble(cell, sum[i][j - 1] + scores.extra(j - 1));
                }
                if (i > 0 && j > 0) {
                    cell = plus.applyAsDouble(cell, sum[i - 1][j - 1] + scores.match(i - 1, j - 1));
                }
                if (i > 1 && j > 1) {
                    cell = plus.applyAsDouble(cell, sum[i - 2][j - 2] + scores.swapped(i - 2, j - 2));
                }
                sum[i][j] = cell;
            }
        }
        return sum;
    }

    private double[][] after() {
        double[][] sum = new double[expected + 1][came + 1];
        for (int i = expected; i >= 0; i--) {
            for (int j = came; j >= 0; j--) {
                double cell = i == expected && j == came ? 0 : Double.NEGATIVE_INFINITY;
                if (i < expected) {
                    cell = logSum(cell, sum[i + 1][j] + scores.leftOut(i));
                }
                if (j < came) {
                    cell = logSum(cell, sum[i][j + 1] + scores.extra(j));
                }
                if (i < expected && j < came) {
                    cell = logSum(cell, sum[i + 1][j + 1] + scores.match(i, j));
                }
                if (i + 1 < expected && j + 1 < came) {
                    cell = logSum(cell, sum[i + 2][j + 2] + scores.swapped(i, j));
                }
                sum[i][j] = cell;
            }
        }
        return sum;
    }

    private static double logSum(double one, double other) {
        double larger = Math.max(one, other);
        double smaller = Math.min(one, other);
        return smaller < larger - NEGLIGIBLE || smaller == Double.NEGATIVE_INFINITY
                ? larger
                : larger + Math.log1p(Math.exp(smaller - larger));
    }
}
