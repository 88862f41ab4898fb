package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Layout;
import buzzout.circuit.Reading;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Forecasts for sets of faults, each made from the forecast of one fault fewer.
 *
 * <p>Faults that sit on different nets and keys do not meddle with each other, so their forecasts are put together key
 * by key; only the keys on which they meet are asked of the circuit again.
 */
final class Forecasts {
    private final Charges charges;
    private final Layout layout;
    private final List<Key> keys;
    private final Readings readings = new Readings();
    private List<Joint> joints = List.of();
    private Forecast sound;
    private final List<Single> singles;

    /** One fault's forecast, with the keys that answer differently than on a sound board. */
    private record Single(Forecast forecast, BitSet changed) {
        static final Single UNKNOWN = new Single(Forecast.of(0, new int[0], new int[0]), new BitSet());
    }

    Forecasts(Charges charges) {
        this.charges = charges;
        layout = new Layout(charges.plan());
        keys = charges.plan().keys();
        sound = whole(new BitSet());
        singles = new ArrayList<>(java.util.Collections.nCopies(charges.count(), Single.UNKNOWN));
    }

    /** From now on these joints are asked about too; all forecasts made before are out of date. */
    void ask(List<Joint> touched) {
        joints = touched;
        sound = whole(new BitSet());
        java.util.Collections.fill(singles, Single.UNKNOWN);
    }

    List<Joint> joints() {
        return joints;
    }

    Readings readings() {
        return readings;
    }

    Forecast sound() {
        return sound;
    }

    /** From the circuit alone, key by key. */
    Forecast whole(BitSet charged) {
        Circuit circuit = Circuit.of(layout, charges.faults(charged));
        Reading quiet = circuit.quiet();
        int[] answers = new int[keys.size()];
        java.util.Arrays.setAll(answers, key -> answer(circuit, quiet, key));
        return Forecast.of(readings.number(quiet), answers, touches(circuit, quiet, joints));
    }

    private int[] touches(Circuit circuit, Reading quiet, List<Joint> any) {
        return any.stream().mapToInt(joint -> touch(circuit, quiet, joint)).toArray();
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
        if (charged.isEmpty()) {
            return single(number).forecast();
        }
        if (charges.loops(charged, number)) {
            return whole(plus(charged, number));
        }
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
        int[] touches = touchesWith(charged, forecast, number);
        if (quietAgain || !again.isEmpty()) {
            Circuit circuit = Circuit.of(layout, charges.faults(plus(charged, number)));
            Reading now = circuit.quiet();
            quiet = readings.number(now);
            for (int key = again.nextSetBit(0); key >= 0; key = again.nextSetBit(key + 1)) {
                answers[key] = answer(circuit, now, key);
            }
        }
        return Forecast.of(quiet, answers, touches);
    }

    /** A touch reads otherwise only where the new fault sits on nets that its joint's net may conduct with. */
    private int[] touchesWith(BitSet charged, Forecast forecast, int number) {
        int[] touches = new int[joints.size()];
        Circuit circuit = null;
        for (int index = 0; index < touches.length; index++) {
            long near = charges.near(1L << joints.get(index).net(charges.plan()), charged);
            if ((near & charges.nets(number)) == 0) {
                touches[index] = forecast.touch(index);
                continue;
            }
            if (circuit == null) {
                circuit = Circuit.of(layout, charges.faults(plus(charged, number)));
            }
            touches[index] = touch(circuit, circuit.quiet(), joints.get(index));
        }
        return touches;
    }

    private int answer(Circuit circuit, Reading quiet, int key) {
        return beyond(circuit.pressed(keys.get(key)), quiet);
    }

    private int touch(Circuit circuit, Reading quiet, Joint joint) {
        return beyond(circuit.touching(joint).quiet(), quiet);
    }

    private int beyond(Reading reading, Reading quiet) {
        return readings.number(
                new Reading(reading.low().minus(quiet.low()), reading.between().minus(quiet.between())));
    }

    /** What touches of these joints, asked about or not, would add to the quiet sweep of a board with these faults. */
    int[] touches(BitSet charged, List<Joint> any) {
        Circuit circuit = Circuit.of(layout, charges.faults(charged));
        return touches(circuit, circuit.quiet(), any);
    }

    private Single single(int number) {
        Single known = singles.get(number);
        if (known.forecast().keys() > 0) {
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
        Circuit circuit = Circuit.of(layout, List.of(charges.fault(number)));
        Reading quiet = circuit.quiet();
        int[] answers = sound.copyOfAnswers();
        BitSet reach = charges.reach(number);
        for (int key = reach.nextSetBit(0); key >= 0; key = reach.nextSetBit(key + 1)) {
            answers[key] = answer(circuit, quiet, key);
        }
        return Forecast.of(readings.number(quiet), answers, touches(circuit, quiet, joints));
    }

    private static BitSet plus(BitSet charged, int number) {
        BitSet more = (BitSet) charged.clone();
        more.set(number);
        return more;
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
