package buzzout.diagnosis;

import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers readings, so that hypotheses are compared by number. Number 0 is the reading of nothing at all. */
final class Readings {
    static final int NOTHING = 0;

    private final Map<Reading, Integer> numbers = new HashMap<>();
    private final List<Reading> readings = new ArrayList<>();
    private boolean[] vague = new boolean[64];

    Readings() {
        number(Reading.NOTHING);
    }

    int number(Reading reading) {
        Integer known = numbers.get(reading);
        if (known != null) {
            return known;
        }
        numbers.put(reading, readings.size());
        if (readings.size() == vague.length) {
            vague = Arrays.copyOf(vague, 2 * vague.length);
        }
        vague[readings.size()] = !reading.between().isEmpty();
        readings.add(reading);
        return readings.size() - 1;
    }

    /** The number of a reading in which exactly these pairs are low for sure. */
    int number(Pairs seen) {
        return number(new Reading(seen, Pairs.NONE));
    }

    /** How many have a number. */
    int count() {
        return readings.size();
    }

    Reading reading(int number) {
        return readings.get(number);
    }

    /** Whether this reading's level is doubtful somewhere. */
    boolean isVague(int number) {
        return vague[number];
    }

    /** The pairs that may be low in both. */
    Pairs common(int number, int other) {
        Reading one = readings.get(number);
        Reading two = readings.get(other);
        return one.low().plus(one.between()).and(two.low().plus(two.between()));
    }

    /** How probable it is that a board which should read {@code forecast} is seen as {@code seen}: 1, 0, or a power of ½. */
    double chance(int forecast, int seen) {
        if (forecast == seen) {
            return 1;
        }
        Reading reading = readings.get(forecast);
        if (reading.between().isEmpty()
                || !reading.agreesWith(readings.get(seen).low())) {
            return 0;
        }
        return Math.pow(0.5, reading.between().count());
    }
}
