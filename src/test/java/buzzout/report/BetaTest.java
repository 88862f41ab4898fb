package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.FaultKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BetaTest {
    /** No failure in so many presses bounds the rate: 1 − 0.05^(1/n), as CHECKS.md section 4 computes it. */
    @ParameterizedTest
    @CsvSource({"30,0.0950", "60,0.0487"})
    void no_failure_bounds_the_rate(long presses, double bound) {
        assertEquals(bound, new Beta(1, presses).quantile(0.95), 0.00005);
    }

    /** Where a or b is 1 the distribution has a closed form. */
    @ParameterizedTest
    @CsvSource({"1,1", "1,9.5", "1,19999", "7,1", "0.5,1", "250,1"})
    void it_agrees_with_the_closed_forms(double a, double b) {
        for (double p : new double[] {0.001, 0.05, 0.5, 0.95, 0.999}) {
            double exact = a == 1 ? -Math.expm1(Math.log1p(-p) / b) : Math.pow(p, 1 / a);
            assertEquals(exact, new Beta(a, b).quantile(p), 1e-9 * exact, a + " " + b + " " + p);
        }
    }

    /** For whole numbers it is a binomial tail: at least a of a + b − 1. */
    @ParameterizedTest
    @CsvSource({"3,4", "2,40", "12,9", "40,160"})
    void it_agrees_with_the_binomial_tail(int a, int b) {
        for (double x : new double[] {0.01, 0.1, 0.3, 0.5, 0.8, 0.99}) {
            int n = a + b - 1;
            double tail = 0;
            double ways = 1;
            for (int j = 0; j <= n; j++) {
                tail += j >= a ? ways * Math.pow(x, j) * Math.pow(1 - x, n - j) : 0;
                ways = ways * (n - j) / (j + 1);
            }
            assertEquals(tail, new Beta(a, b).upTo(x), 1e-9, a + " " + b + " " + x);
        }
    }

    @Test
    void a_prior_without_any_count_is_the_judged_one() {
        ProposedPrior prior = ProposedPrior.of(FaultKind.LINK_OPEN, 0, 0, 0.004);
        assertEquals(0.004, prior.proposed(), 1e-12);
        assertEquals(0.004 / 20, prior.low(), 0.00001);
        assertEquals(0.004 * 3, prior.high(), 0.0001);
    }

    @Test
    void counting_moves_the_prior_towards_the_rate_and_narrows_it() {
        ProposedPrior few = ProposedPrior.of(FaultKind.LINK_OPEN, 1, 36, 0.004);
        ProposedPrior many = ProposedPrior.of(FaultKind.LINK_OPEN, 100, 3600, 0.004);
        assertEquals(2 / 286.0, few.proposed(), 1e-12);
        assertEquals(101 / 3850.0, many.proposed(), 1e-12);
        assertTrue(many.high() / many.low() < few.high() / few.low() / 5);
        assertTrue(many.low() < 100 / 3600.0 && 100 / 3600.0 < many.high());
    }
}
