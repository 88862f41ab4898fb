package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import java.util.BitSet;
import java.util.List;

/** What a board with certain faults would show, as numbers of readings. */
final class Forecast {
    private final int quiet;
    private final int[] answers;

    private Forecast(int quiet, int[] answers) {
        this.quiet = quiet;
        this.answers = answers;
    }

    /** The sweep without a press. */
    int quiet() {
        return quiet;
    }

    /** What this key's press adds to the quiet sweep. */
    int answer(int key) {
        return answers[key];
    }

    int keys() {
        return answers.length;
    }

    static Forecast of(Readings readings, List<Key> keys, Circuit circuit) {
        Reading quiet = circuit.quiet();
        int[] answers = new int[keys.size()];
        for (Key key : keys) {
            answers[key.index()] = answer(readings, quiet, circuit, key);
        }
        return new Forecast(readings.number(quiet), answers);
    }

    /** The same board with more faults, none of which can change other keys' answers than these. */
    Forecast changed(Readings readings, List<Key> keys, Circuit circuit, BitSet affected) {
        Reading now = circuit.quiet();
        int[] changed = answers.clone();
        for (int key = affected.nextSetBit(0); key >= 0; key = affected.nextSetBit(key + 1)) {
            changed[key] = answer(readings, now, circuit, keys.get(key));
        }
        return new Forecast(readings.number(now), changed);
    }

    static int answer(Readings readings, Reading quiet, Circuit circuit, Key key) {
        Reading pressed = circuit.pressed(key);
        return readings.number(
                new Reading(pressed.low().minus(quiet.low()), pressed.between().minus(quiet.between())));
    }
}
