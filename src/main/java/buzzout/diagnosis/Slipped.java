package buzzout.diagnosis;

import java.util.Arrays;

/** What came of one key or trial, and what each answer costs where another is forecast. */
final class Slipped {
    private int[] answers = {};
    private int[] times = {};
    /** For all times together. */
    private double[] costs = {};

    /**
     * Adds what came in one way of asking.
     *
     * @param nothing the logarithm of the probability that nothing came by a slip
     * @param another the same of another answer
     */
    void add(Tally came, double nothing, double another) {
        int count = answers.length;
        answers = Arrays.copyOf(answers, count + came.count());
        times = Arrays.copyOf(times, count + came.count());
        costs = Arrays.copyOf(costs, count + came.count());
        for (int place = 0; place < came.count(); place++) {
            int answer = came.answer(place);
            answers[count + place] = answer;
            times[count + place] = came.times(place);
            costs[count + place] = came.times(place) * (answer == Readings.NOTHING ? nothing : another);
        }
    }

    /** Of a forecast that is sure. */
    double cost(int forecast) {
        double cost = 0;
        for (int place = 0; place < answers.length; place++) {
            if (answers[place] != forecast) {
                cost += costs[place];
            }
        }
        return cost;
    }

    /**
     * Of any forecast.
     *
     * @param slips how often slips count: once, or not at all
     */
    double cost(int forecast, Readings readings, int slips) {
        double cost = 0;
        for (int place = 0; place < answers.length; place++) {
            double chance = readings.chance(forecast, answers[place]);
            cost += chance > 0 ? times[place] * Math.log(chance) : slips * costs[place];
        }
        return cost;
    }
}
