package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Reading;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Forecasts for sets of faults, each made from the forecast of one fault fewer.
 *
 * <p>Faults that sit on different nets and keys do not meddle with each other, so their forecasts are put together key
 * by key; only the keys on which they meet are asked of the circuit again.
 */
final class Forecasts {
    /** Answers; four bytes each. */
    private static final long MOST_REMEMBERED = 2_000_000;

    private final Charges charges;
    private final Boards boards;
    private final List<Key> keys;
    private final List<Trial> trials = new ArrayList<>();
    private Forecast sound;
    private List<Single> singles = List.of();
    private final Map<SetOfFaults, Forecast> made = new HashMap<>();

    /** One fault's forecast, with the keys that answer differently than on a sound board. */
    private record Single(Forecast forecast, BitSet changed) {
        static final Single UNKNOWN = new Single(Forecast.of(0, new int[0]), new BitSet());
    }

    Forecasts(Plan plan, Priors priors) {
        charges = new Charges(plan, priors);
        boards = new Boards(charges);
        keys = charges.plan().keys();
        sound = afresh();
    }

    private Forecast afresh() {
        singles = new ArrayList<>(Collections.nCopies(charges.count(), Single.UNKNOWN));
        made.clear();
        return whole(new BitSet());
    }

    /** The place of a trial among the questions that forecasts answer; all older forecasts lack a new one. */
    int asked(Trial trial) {
        int known = trials.indexOf(trial);
        if (known < 0) {
            trials.add(trial);
            sound = afresh();
        }
        return keys.size() + trials.indexOf(trial);
    }

    List<Trial> trials() {
        return trials;
    }

    Charges charges() {
        return charges;
    }

    Readings readings() {
        return boards.readings();
    }

    /** The board of these faults of nets, whose keys may have faults too. */
    WiredNets wired(BitSet nets) {
        return new WiredNets(boards, nets);
    }

    Forecast sound() {
        return sound;
    }

    /** From the circuit alone, key by key. */
    Forecast whole(BitSet charged) {
        Circuit circuit = boards.circuit(charged);
        Reading quiet = boards.quiet(circuit);
        int[] answers = new int[keys.size() + trials.size()];
        java.util.Arrays.setAll(
                answers,
                asked -> asked < keys.size()
                        ? boards.answer(circuit, quiet, asked)
                        : outcome(circuit, quiet, trials.get(asked - keys.size())));
        return Forecast.of(boards.readings().number(quiet), answers);
    }

    Forecast of(BitSet charged) {
        Forecast forecast = sound;
        BitSet sofar = new BitSet();
        for (int number = charged.nextSetBit(0); number >= 0; number = charged.nextSetBit(number + 1)) {
            forecast = with(sofar, forecast, number);
            sofar.set(number);
        }
        return forecast;
    }

    /** The forecast of a board with these faults, whose forecast is at hand, and one more. */
    Forecast with(BitSet charged, Forecast forecast, int number) {
        return with(charged, forecast, number, new SetOfFaults(charged, number));
    }

    /** @param name what all of them are remembered by */
    Forecast with(BitSet charged, Forecast forecast, int number, SetOfFaults name) {
        if (charged.isEmpty()) {
            return single(number).forecast();
        }
        // Searches meet the same sets again and again, whatever was pressed meanwhile.
        Forecast known = made.get(name);
        if (known != null) {
            return known;
        }
        if (made.size() * (long) forecast.asked() >= MOST_REMEMBERED) {
            made.clear();
        }
        BitSet both = SetOfFaults.with(charged, number);
        Forecast fresh = charges.loops(charged, number) ? whole(both) : joined(charged, forecast, number, both);
        made.put(name, fresh);
        return fresh;
    }

    private Forecast joined(BitSet charged, Forecast forecast, int number, BitSet both) {
        Single single = single(number);
        Meeting meeting = new Meeting(charged, number);
        BitSet again = meeting.keys();
        boolean quietAgain =
                (forecast.quiet() != sound.quiet() || single.forecast().quiet() != sound.quiet())
                        && (meeting.sharesNets()
                                || (forecast.quiet() != sound.quiet()
                                        && single.forecast().quiet() != sound.quiet()));
        int[] answers = forecast.copyOfAnswers();
        BitSet changed = single.changed();
        for (int key = changed.nextSetBit(0); key >= 0; key = changed.nextSetBit(key + 1)) {
            answers[key] = single.forecast().answer(key);
        }
        int quiet = forecast.quiet() == sound.quiet() ? single.forecast().quiet() : forecast.quiet();
        if (quietAgain || !again.isEmpty()) {
            Circuit circuit = boards.circuit(both);
            Reading now = boards.quiet(circuit);
            quiet = boards.readings().number(now);
            for (int key = again.nextSetBit(0); key >= 0; key = again.nextSetBit(key + 1)) {
                answers[key] = boards.answer(circuit, now, key);
            }
        }
        tryAgain(both, number, boards.readings().reading(quiet), answers);
        return Forecast.of(quiet, answers);
    }

    /** Asks the circuit again about each trial on whose nets a fault has a say. */
    private void tryAgain(BitSet charged, int number, Reading quiet, int[] answers) {
        BitSet concerned = new BitSet();
        for (int trial = 0; trial < trials.size(); trial++) {
            concerned.set(trial, isConcerned(trials.get(trial), charged, number));
        }
        if (concerned.isEmpty()) {
            return;
        }
        Circuit circuit = boards.circuit(charged);
        for (int trial = concerned.nextSetBit(0); trial >= 0; trial = concerned.nextSetBit(trial + 1)) {
            answers[keys.size() + trial] = outcome(circuit, quiet, trials.get(trial));
        }
    }

    private boolean isConcerned(Trial trial, BitSet charged, int number) {
        return charges.holdsAny(charged)
                || (charges.reached(trial.nets(charges.plan()), charged) & charges.nets(number)) != 0;
    }

    private int outcome(Circuit circuit, Reading quiet, Trial trial) {
        Reading now = trial.reading(circuit);
        return trial instanceof Trial.Touch
                ? boards.beyond(circuit.quiet(), now)
                : boards.beyond(quiet, boards.hanging(now));
    }

    /** What touches of these joints, tried or not, would add to the quiet sweep of a board with these faults. */
    int[] touches(BitSet charged, List<Joint> joints) {
        Circuit circuit = boards.circuit(charged);
        Reading quiet = circuit.quiet();
        int[] read = new int[joints.size()];
        for (int joint = 0; joint < read.length; joint++) {
            read[joint] =
                    boards.beyond(quiet, circuit.touching(joints.get(joint)).quiet());
        }
        return read;
    }

    private Single single(int number) {
        Single known = singles.get(number);
        if (known.forecast().asked() > 0) {
            return known;
        }
        Forecast forecast = lone(number);
        BitSet changed = new BitSet();
        for (int key = 0; key < keys.size(); key++) {
            changed.set(key, forecast.answer(key) != sound.answer(key));
        }
        Single single = new Single(forecast, changed);
        singles.set(number, single);
        return single;
    }

    private Forecast lone(int number) {
        Circuit circuit = boards.lone(number);
        Reading quiet = boards.quiet(circuit);
        int[] answers = sound.copyOfAnswers();
        BitSet reach = charges.reach(number);
        for (int key = reach.nextSetBit(0); key >= 0; key = reach.nextSetBit(key + 1)) {
            answers[key] = boards.answer(circuit, quiet, key);
        }
        BitSet only = new BitSet();
        only.set(number);
        tryAgain(only, number, quiet, answers);
        return Forecast.of(boards.readings().number(quiet), answers);
    }

    /** Where one more fault meets those that are charged already. */
    private final class Meeting {
        private final BitSet keys = new BitSet();
        private boolean sharesNets;

        Meeting(BitSet charged, int number) {
            long nets = charges.nets(number);
            boolean inOneKey = charges.inOneKey(number);
            boolean tied = false;
            for (int other = charged.nextSetBit(0); other >= 0; other = charged.nextSetBit(other + 1)) {
                if ((charges.nets(other) & nets) == 0) {
                    continue;
                }
                sharesNets = true;
                if (inOneKey || charges.inOneKey(other)) {
                    keys.or(charges.reach(inOneKey ? number : other));
                } else if (charges.tiesNets(number) || charges.tiesNets(other)) {
                    tied = true;
                }
            }
            if (tied) {
                tie(charged, charges.joined(nets, charged));
            } else if (!inOneKey) {
                crossings(charged, number);
            }
        }

        /** All keys on nets that are tied together now, and those that strayed onto them. */
        private void tie(BitSet charged, long joined) {
            keys.or(charges.keysOn(joined));
            for (int other = charged.nextSetBit(0); other >= 0; other = charged.nextSetBit(other + 1)) {
                if (charges.inOneKey(other) && (charges.nets(other) & joined) != 0) {
                    keys.or(charges.reach(other));
                }
            }
        }

        /** Keys where a net of this fault crosses a net of another. */
        private void crossings(BitSet charged, int number) {
            BitSet reach = charges.reach(number);
            for (int other = charged.nextSetBit(0); other >= 0; other = charged.nextSetBit(other + 1)) {
                if (!charges.inOneKey(other) && charges.reach(other).intersects(reach)) {
                    BitSet both = (BitSet) reach.clone();
                    both.and(charges.reach(other));
                    keys.or(both);
                }
            }
        }

        BitSet keys() {
            return keys;
        }

        boolean sharesNets() {
            return sharesNets;
        }
    }
}
