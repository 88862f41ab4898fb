package buzzout.report;

/**
 * A beta distribution, what is known of a probability after counting.
 *
 * @param a one plus what was counted, more than 0
 * @param b one plus what was not, more than 0
 */
record Beta(double a, double b) {
    private static final int MOST_STEPS = 500;
    private static final double TINY = 1e-300;
    private static final double EXACT = 1e-15;

    double mean() {
        return a / (a + b);
    }

    /** After {@code found} more in {@code tried} more. */
    Beta after(long found, long tried) {
        return new Beta(a + found, b + tried - found);
    }

    /** The value below which it lies with this probability, by bisection. */
    double quantile(double probability) {
        double low = 0;
        double high = 1;
        for (int step = 0; step < 100 && high - low > EXACT * high; step++) {
            double middle = (low + high) / 2;
            if (upTo(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The probability of at most {@code x}: the regularised incomplete beta function, DLMF 8.17.22 with 8.17.4. */
    double upTo(double x) {
        if (x <= 0 || x >= 1) {
            return x <= 0 ? 0 : 1;
        }
        double logFront = a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
        return x < (a + 1) / (a + b + 2)
                ? Math.exp(logFront) / (a * fraction(a, b, x))
                : 1 - Math.exp(logFront) / (b * fraction(b, a, 1 - x));
    }

    /** The continued fraction of DLMF 8.17.22, whose inverse times the front is the function; Lentz's method. */
    private static double fraction(double a, double b, double x) {
        double value = 1;
        double above = 1;
        double below = 0;
        for (int step = 1; step <= MOST_STEPS; step++) {
            int m = step / 2;
            double term = step % 2 == 0
                    ? m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m))
                    : -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            below = 1 / apart(1 + term * below);
            above = apart(1 + term / above);
            value *= above * below;
            if (Math.abs(above * below - 1) < EXACT) {
                break;
            }
        }
        return value;
    }

    private static double apart(double value) {
        return Math.abs(value) < TINY ? TINY : value;
    }

    /** Stirling's series, DLMF 5.11.1, taken far enough from the origin by the recurrence 5.5.1. */
    private static double logGamma(double x) {
        double shift = 0;
        double z = x;
        while (z < 12) {
            shift -= Math.log(z);
            z++;
        }
        double square = z * z;
        double series = (1.0 / 12 - (1.0 / 360 - (1.0 / 1260 - 1.0 / (1680 * square)) / square) / square) / z;
        return shift + (z - 0.5) * Math.log(z) - z + 0.5 * Math.log(2 * Math.PI) + series;
    }
}
