package buzzout.diagnosis;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a ledger's terms cost under one forecast, and under forecasts that differ from it in a few keys. */
final class Weights {
    private static final double NOTHING = 1e-9;

    private final Ledger ledger;
    private final Readings readings;
    private final Forecast forecast;
    private final int keys;
    private final Counts able = new Counts();
    private final Counts due = new Counts();

    Weights(Ledger ledger, Readings readings, Forecast forecast) {
        this.ledger = ledger;
        this.readings = readings;
        this.forecast = forecast;
        keys = ledger.keys();
        if (ledger.matchesAnswers()) {
            for (int key = 0; key < keys; key++) {
                count(key, forecast.answer(key), 1);
            }
        }
    }

    private void count(int key, int answer, int more) {
        able.add(answer, more);
        if (!ledger.isNamed(key)) {
            due.add(answer, more);
        }
        if (readings.isVague(answer)) {
            BitSet came = ledger.came();
            for (int seen = came.nextSetBit(0); seen >= 0; seen = came.nextSetBit(seen + 1)) {
                if (seen != answer && readings.chance(answer, seen) > 0) {
                    able.add(seen, more);
                }
            }
        }
    }

    /** What all terms cost together. */
    double total() {
        double total = ledger.quietCost(forecast.quiet());
        for (int asked = 0; asked < forecast.asked(); asked++) {
            total += ledger.askedCost(asked, forecast.answer(asked));
        }
        if (ledger.matchesAnswers()) {
            BitSet answers = answers();
            for (int answer = answers.nextSetBit(0); answer >= 0; answer = answers.nextSetBit(answer + 1)) {
                total += answerCost(answer);
            }
        }
        return total;
    }

    /** The answers that came, and those that keys would give. */
    private BitSet answers() {
        BitSet answers = (BitSet) ledger.came().clone();
        for (int key = 0; key < keys; key++) {
            answers.set(forecast.answer(key));
        }
        return answers;
    }

    /** Every term that costs something beyond the doubt of levels that may read either way. */
    Map<Term, Double> costs() {
        Map<Term, Double> costs = new LinkedHashMap<>();
        put(costs, new Term.Quiet(), ledger.quietCost(forecast.quiet()) - ledger.quietDoubt(forecast.quiet()));
        for (int asked = 0; asked < forecast.asked(); asked++) {
            int answer = forecast.answer(asked);
            put(costs, term(asked), ledger.askedCost(asked, answer) - ledger.askedDoubt(asked, answer));
        }
        if (ledger.matchesAnswers()) {
            answers().stream().forEach(answer -> put(costs, new Term.OfAnswer(answer), answerCost(answer)));
        }
        return costs;
    }

    private Term term(int asked) {
        return asked < keys ? new Term.OfKey(asked) : new Term.OfTrial(asked - keys);
    }

    private static void put(Map<Term, Double> costs, Term term, double cost) {
        if (cost < -NOTHING) {
            costs.put(term, cost);
        }
    }

    private double answerCost(int answer) {
        // A level that may read either way is judged by its key's own term, not by how often it should have come.
        return ledger.answerCost(answer, able.of(answer), readings.isVague(answer) ? 0 : due.of(answer));
    }

    /** What changes when another forecast takes this one's place. */
    void compare(Forecast next, Tolerance tolerance, Change change) {
        change.clear();
        if (next.quiet() != forecast.quiet()) {
            change.add(
                    tolerance.ofQuiet(),
                    ledger.quietCost(forecast.quiet()),
                    ledger.quietDoubt(forecast.quiet()),
                    ledger.quietCost(next.quiet()),
                    ledger.quietDoubt(next.quiet()));
        }
        BitSet touched = change.touched();
        for (int asked = 0; asked < forecast.asked(); asked++) {
            int before = forecast.answer(asked);
            int after = next.answer(asked);
            if (before == after) {
                continue;
            }
            double tolerated = asked < keys ? tolerance.ofKey(asked) : tolerance.ofTrial(asked - keys);
            change.add(
                    tolerated,
                    ledger.askedCost(asked, before),
                    ledger.askedDoubt(asked, before),
                    ledger.askedCost(asked, after),
                    ledger.askedDoubt(asked, after));
            if (asked < keys && ledger.matchesAnswers()) {
                touch(touched, before);
                touch(touched, after);
            }
        }
        if (!touched.isEmpty()) {
            compareAnswers(next, tolerance, change, touched);
        }
    }

    private void compareAnswers(Forecast next, Tolerance tolerance, Change change, BitSet touched) {
        for (int answer = touched.nextSetBit(0); answer >= 0; answer = touched.nextSetBit(answer + 1)) {
            change.before(answer, answerCost(answer));
        }
        shift(next, 1);
        for (int answer = touched.nextSetBit(0); answer >= 0; answer = touched.nextSetBit(answer + 1)) {
            change.add(tolerance.ofAnswer(answer), change.before(answer), 0, answerCost(answer), 0);
        }
        shift(next, -1);
    }

    private void touch(BitSet touched, int answer) {
        touched.set(answer);
        if (readings.isVague(answer)) {
            touched.or(ledger.came());
        }
    }

    private void shift(Forecast next, int direction) {
        for (int key = 0; key < keys; key++) {
            if (forecast.answer(key) != next.answer(key)) {
                count(key, forecast.answer(key), -direction);
                count(key, next.answer(key), direction);
            }
        }
    }
}
