package buzzout.diagnosis;

import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How well a forecast accounts for the evidence.
 *
 * @param logLikelihood the sum over all atoms
 * @param unexplained atoms that only a slip could explain, each with its logarithm
 */
record Account(double logLikelihood, Map<Atom, Double> unexplained) {
    static Account of(Readings readings, Tally tally, Forecast forecast) {
        return new Reckoning(readings, tally, forecast).account();
    }

    /** Whether the quiet check agrees with a forecast of it. */
    static boolean agrees(Tally tally, Reading quiet) {
        return tally.quiet().isEmpty() || quiet.agreesWith(tally.quiet().get());
    }

    private static final class Reckoning {
        private final Readings readings;
        private final Tally tally;
        private final Forecast forecast;
        private final Map<Atom, Double> unexplained = new LinkedHashMap<>();
        private double sum;

        Reckoning(Readings readings, Tally tally, Forecast forecast) {
            this.readings = readings;
            this.tally = tally;
            this.forecast = forecast;
        }

        Account account() {
            tally.quiet().ifPresent(this::quiet);
            meant();
            free();
            if (tally.everyKey()) {
                covered();
            }
            return new Account(sum, unexplained);
        }

        private void slip(Atom atom, double logChance) {
            unexplained.put(atom, logChance);
            sum += logChance;
        }

        private void quiet(Pairs seen) {
            Reading quiet = readings.reading(forecast.quiet());
            sum += quiet.between().count() * Math.log(0.5);
            if (!quiet.agreesWith(seen)) {
                Pairs possible = quiet.low().plus(quiet.between());
                int wrong =
                        seen.minus(possible).count() + quiet.low().minus(seen).count();
                slip(new Atom.Quiet(), wrong * Math.log(Slips.MISREAD));
            }
        }

        /** How many keys would give this answer, each by its chance. */
        private double givers(int answer) {
            double givers = 0;
            for (int key = 0; key < forecast.keys(); key++) {
                givers += readings.chance(forecast.answer(key), answer);
            }
            return givers;
        }

        private void meant() {
            for (int number = 0; number < tally.meant().size(); number++) {
                Tally.Meant press = tally.meant().get(number);
                double right = readings.chance(forecast.answer(press.key()), press.answer());
                if (right == 1) {
                    sum += Slips.LOG_RIGHT;
                    continue;
                }
                double missed = press.answer() == Readings.NOTHING ? 1 : 0;
                double chance = (1 - Slips.WRONG_KEY - Slips.NO_PRESS - Slips.STRAY) * right
                        + Slips.WRONG_KEY * givers(press.answer()) / forecast.keys()
                        + Slips.NO_PRESS * missed
                        + Slips.STRAY;
                if (right == 0) {
                    slip(new Atom.Meant(press.key(), press.answer(), number), Math.log(chance));
                } else {
                    sum += Math.log(chance);
                }
            }
        }

        private void free() {
            for (Map.Entry<Integer, Integer> entry : tally.free().entrySet()) {
                double able = givers(entry.getKey());
                if (able == 0) {
                    slip(new Atom.Free(entry.getKey()), entry.getValue() * Math.log(Slips.STRAY));
                } else if (entry.getValue() > Math.ceil(able)) {
                    sum += Math.log(Slips.REPEAT);
                }
            }
        }

        private void covered() {
            BitSet named = new BitSet();
            tally.meant().forEach(press -> named.set(press.key()));
            Map<Integer, Integer> left = new HashMap<>(tally.free());
            for (int key = 0; key < forecast.keys(); key++) {
                int answer = forecast.answer(key);
                if (named.get(key) || answer == Readings.NOTHING || readings.isVague(answer)) {
                    continue;
                }
                int came = left.getOrDefault(answer, 0);
                if (came > 0) {
                    left.put(answer, came - 1);
                } else {
                    slip(new Atom.Covered(key), Math.log(Slips.LEFT_OUT));
                }
            }
        }
    }
}
