package buzzout.diagnosis;

import buzzout.circuit.Pairs;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * How well a forecast accounts for the evidence.
 *
 * @param logLikelihood the sum over all atoms
 * @param unexplained atoms that only a slip could explain, each with its logarithm
 */
record Account(double logLikelihood, Map<Atom, Double> unexplained) {
    static Account of(Tally tally, Forecast forecast) {
        Map<Atom, Double> unexplained = new LinkedHashMap<>();
        double sum = 0;
        sum += quiet(tally, forecast, unexplained);
        Map<Pairs, Double> givers = givers(forecast);
        sum += meant(tally, forecast, givers, unexplained);
        sum += free(tally, forecast, givers, unexplained);
        if (tally.everyKey()) {
            sum += covered(tally, forecast, unexplained);
        }
        return new Account(sum, unexplained);
    }

    private static double quiet(Tally tally, Forecast forecast, Map<Atom, Double> unexplained) {
        if (tally.quiet().isEmpty()) {
            return 0;
        }
        Pairs seen = tally.quiet().get();
        Pairs possible = forecast.quiet().low().plus(forecast.quiet().between());
        int wrong = seen.minus(possible).count()
                + forecast.quiet().low().minus(seen).count();
        if (wrong > 0) {
            unexplained.put(new Atom.Quiet(), wrong * Math.log(Slips.MISREAD));
        }
        return wrong * Math.log(Slips.MISREAD) + forecast.quiet().between().count() * Math.log(0.5);
    }

    /** For each answer, how many keys would give it. */
    private static Map<Pairs, Double> givers(Forecast forecast) {
        Map<Pairs, Double> givers = new HashMap<>();
        for (var reading : forecast.answers()) {
            if (reading.between().isEmpty()) {
                givers.merge(reading.low(), 1.0, Double::sum);
            }
        }
        return givers;
    }

    private static double givers(Forecast forecast, Map<Pairs, Double> givers, Pairs answer) {
        double sum = givers.getOrDefault(answer, 0.0);
        for (var reading : forecast.answers()) {
            if (!reading.between().isEmpty()) {
                sum += Forecast.chance(reading, answer);
            }
        }
        return sum;
    }

    private static double meant(
            Tally tally, Forecast forecast, Map<Pairs, Double> givers, Map<Atom, Double> unexplained) {
        double sum = 0;
        int number = 0;
        for (Tally.Meant press : tally.meant()) {
            double right = forecast.chance(press.key(), press.answer());
            double slipped = givers(forecast, givers, press.answer())
                    / forecast.answers().size();
            double missed = press.answer().isEmpty() ? 1 : 0;
            double chance = (1 - Slips.WRONG_KEY - Slips.NO_PRESS - Slips.STRAY) * right
                    + Slips.WRONG_KEY * slipped
                    + Slips.NO_PRESS * missed
                    + Slips.STRAY;
            if (right == 0) {
                unexplained.put(new Atom.Meant(press.key(), press.answer(), number), Math.log(chance));
            }
            sum += Math.log(chance);
            number++;
        }
        return sum;
    }

    private static double free(
            Tally tally, Forecast forecast, Map<Pairs, Double> givers, Map<Atom, Double> unexplained) {
        double sum = 0;
        for (Map.Entry<Pairs, Integer> entry : tally.free().entrySet()) {
            double able = givers(forecast, givers, entry.getKey());
            if (able == 0) {
                double cost = entry.getValue() * Math.log(Slips.STRAY);
                unexplained.put(new Atom.Free(entry.getKey()), cost);
                sum += cost;
            } else if (entry.getValue() > Math.ceil(able)) {
                sum += Math.log(Slips.REPEAT);
            }
        }
        return sum;
    }

    private static double covered(Tally tally, Forecast forecast, Map<Atom, Double> unexplained) {
        Set<Integer> named = new HashSet<>();
        tally.meant().forEach(press -> named.add(press.key()));
        Map<Pairs, Integer> left = new HashMap<>(tally.free());
        double sum = 0;
        for (int key = 0; key < forecast.answers().size(); key++) {
            var reading = forecast.answers().get(key);
            if (named.contains(key)
                    || (reading.low().isEmpty() && reading.between().isEmpty())) {
                continue;
            }
            Pairs answer = reading.low();
            int came = left.getOrDefault(answer, 0);
            if (came > 0) {
                left.put(answer, came - 1);
            } else if (reading.between().isEmpty()) {
                unexplained.put(new Atom.Covered(key), Math.log(Slips.LEFT_OUT));
                sum += Math.log(Slips.LEFT_OUT);
            }
        }
        return sum;
    }
}
