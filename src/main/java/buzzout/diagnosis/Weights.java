package buzzout.diagnosis;

import java.util.Arrays;
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
    /** For each key and trial what it costs under this forecast, once that was asked for. */
    private final double[] costNow;

    Weights(Ledger ledger, Readings readings, Forecast forecast) {
        this.ledger = ledger;
        this.readings = readings;
        this.forecast = forecast;
        keys = ledger.keys();
        costNow = new double[forecast.asked()];
        Arrays.fill(costNow, Double.NaN);
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
            total += askedCost(asked);
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
            put(costs, term(asked), askedCost(asked) - ledger.askedDoubt(asked, answer));
        }
        if (ledger.matchesAnswers()) {
            BitSet answers = answers();
            for (int answer = answers.nextSetBit(0); answer >= 0; answer = answers.nextSetBit(answer + 1)) {
                put(costs, new Term.OfAnswer(answer), answerCost(answer));
            }
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

    /** Whether nothing would be better with another answer of this key. */
    boolean isPleased(int key, int answer) {
        return ledger.askedCost(key, answer) > -NOTHING
                && (!ledger.matchesAnswers() || ledger.isNamed(key) || answerCost(answer) > -NOTHING);
    }

    /** What answers cost that come too often, too seldom or from nowhere. */
    Map<Integer, Double> answerCosts() {
        Map<Integer, Double> costs = new LinkedHashMap<>();
        if (ledger.matchesAnswers()) {
            BitSet answers = able.present();
            answers.or(ledger.came());
            for (int answer = answers.nextSetBit(0); answer >= 0; answer = answers.nextSetBit(answer + 1)) {
                double cost = answerCost(answer);
                if (cost < -NOTHING) {
                    costs.put(answer, cost);
                }
            }
        }
        return costs;
    }

    /** What it would change if a key gave another answer. */
    double ifMoved(int key, int before, int after) {
        if (ledger.matchesAnswers() && (readings.isVague(before) || readings.isVague(after))) {
            double change = move(key, before, after);
            move(key, after, before);
            return change;
        }
        double change = ledger.askedCost(key, after) - ledger.askedCost(key, before);
        if (!ledger.matchesAnswers()) {
            return change;
        }
        int dueToo = ledger.isNamed(key) ? 0 : 1;
        return change
                + ledger.answerCost(before, able.of(before) - 1, due.of(before) - dueToo)
                - ledger.answerCost(before, able.of(before), due.of(before))
                + ledger.answerCost(after, able.of(after) + 1, due.of(after) + dueToo)
                - ledger.answerCost(after, able.of(after), due.of(after));
    }

    /** Lets a key give another answer; what that changes. */
    double move(int key, int before, int after) {
        double change = ledger.askedCost(key, after) - ledger.askedCost(key, before);
        if (!ledger.matchesAnswers()) {
            return change;
        }
        BitSet touched = new BitSet();
        touch(touched, before);
        touch(touched, after);
        for (int answer = touched.nextSetBit(0); answer >= 0; answer = touched.nextSetBit(answer + 1)) {
            change -= answerCost(answer);
        }
        count(key, before, -1);
        count(key, after, 1);
        for (int answer = touched.nextSetBit(0); answer >= 0; answer = touched.nextSetBit(answer + 1)) {
            change += answerCost(answer);
        }
        return change;
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
        for (int asked = forecast.differing(next, 0);
                asked < forecast.asked();
                asked = forecast.differing(next, asked + 1)) {
            int before = forecast.answer(asked);
            int after = next.answer(asked);
            double tolerated = asked < keys ? tolerance.ofKey(asked) : tolerance.ofTrial(asked - keys);
            change.add(
                    tolerated,
                    askedCost(asked),
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

    private double askedCost(int asked) {
        if (Double.isNaN(costNow[asked])) {
            costNow[asked] = ledger.askedCost(asked, forecast.answer(asked));
        }
        return costNow[asked];
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
        for (int key = forecast.differing(next, 0); key < keys; key = forecast.differing(next, key + 1)) {
            count(key, forecast.answer(key), -direction);
            count(key, next.answer(key), direction);
        }
    }
}
