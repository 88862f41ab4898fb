package buzzout.diagnosis;

import buzzout.circuit.Across;
import buzzout.circuit.Circuit;
import buzzout.circuit.Layout;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** What boards with faults answer, as numbers of readings. */
final class Boards {
    private final Charges charges;
    private final Layout layout;
    private final List<Key> keys;
    private final OptionalInt sparePin;
    private final Readings readings = new Readings();
    private final KnownNumbers across = new KnownNumbers();
    /** For each fault, the board that has no other, once it was asked for. */
    private final List<Optional<Circuit>> lone;

    Boards(Charges charges) {
        this.charges = charges;
        Plan plan = charges.plan();
        layout = new Layout(plan);
        keys = plan.keys();
        sparePin = plan.sparePinIndex();
        lone = new ArrayList<>(Collections.nCopies(charges.count(), Optional.empty()));
    }

    Readings readings() {
        return readings;
    }

    Circuit circuit(BitSet charged) {
        return Circuit.of(layout, charges.faults(charged));
    }

    Circuit lone(int fault) {
        return lone.get(fault).orElseGet(() -> {
            Circuit circuit = Circuit.of(layout, List.of(charges.fault(fault)));
            lone.set(fault, Optional.of(circuit));
            return circuit;
        });
    }

    /** While the flying lead hangs free, what conducts with its pin says nothing that other pins do not say. */
    Reading hanging(Reading reading) {
        return sparePin.isEmpty()
                ? reading
                : new Reading(
                        reading.low().withoutPin(sparePin.getAsInt()),
                        reading.between().withoutPin(sparePin.getAsInt()));
    }

    Reading quiet(Circuit circuit) {
        return hanging(circuit.quiet());
    }

    int beyond(Reading quiet, Reading now) {
        return readings.number(
                new Reading(now.low().minus(quiet.low()), now.between().minus(quiet.between())));
    }

    /** What a key's press adds to the quiet sweep. */
    int answer(Circuit circuit, Reading quiet, int key) {
        Optional<Across> only = circuit.across(keys.get(key), circuit);
        return only.isPresent()
                ? number(circuit, only.get())
                : readings.number(hanging(circuit.added(keys.get(key), quiet)));
    }

    /** The same with one more fault, which sits in this key; the board's own sit in nets. */
    int answer(BitSet charged, Circuit circuit, Reading quiet, int key, int fault) {
        Key pressed = keys.get(key);
        Optional<Across> only = circuit.across(pressed, lone(fault));
        return only.isPresent()
                ? number(circuit, only.get())
                : circuit.addedIfSoldered(pressed, lone(fault), quiet)
                        .map(added -> readings.number(hanging(added)))
                        .orElseGet(() -> answer(circuit(SetOfFaults.with(charged, fault)), quiet, key));
    }

    private int number(Circuit circuit, Across only) {
        return across.number(only, each -> readings.number(hanging(circuit.added(each))));
    }
}
