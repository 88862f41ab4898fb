package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * What a board with certain faults would show.
 *
 * @param quiet the sweep without a press
 * @param answers for each key, what its press adds to that
 */
record Forecast(Reading quiet, List<Reading> answers) {
    static Forecast of(Plan plan, Collection<Fault> faults) {
        Circuit circuit = Circuit.of(plan, faults);
        Reading quiet = circuit.quiet();
        List<Reading> answers = new ArrayList<>(plan.keys().size());
        for (Key key : plan.keys()) {
            Reading pressed = circuit.pressed(key);
            Pairs low = pressed.low().minus(quiet.low());
            Pairs between = pressed.between().minus(quiet.between());
            answers.add(new Reading(low, between));
        }
        return new Forecast(quiet, answers);
    }

    /** How probable it is that this key's press gives this answer: 1 or 0, halved for each pair that may read either way. */
    double chance(int key, Pairs answer) {
        return chance(answers.get(key), answer);
    }

    static double chance(Reading reading, Pairs answer) {
        if (reading.between().isEmpty()) {
            return reading.low().equals(answer) ? 1 : 0;
        }
        return reading.agreesWith(answer) ? Math.pow(0.5, reading.between().count()) : 0;
    }
}
