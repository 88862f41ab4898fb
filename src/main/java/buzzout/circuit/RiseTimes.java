package buzzout.circuit;

import buzzout.plan.Controller;
import buzzout.plan.Plan;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.OptionalLong;

/**
 * How long pins that were low take to read high on their pull-ups, no key held. It takes longer the more wire hangs on a
 * pin: t = R·C·ln(VCC / (VCC − VIH)).
 */
public final class RiseTimes {
    /** The pin alone (memory of data sheets). */
    private static final double PIN_PICOFARADS = 10;

    /**
     * A lead, and each joint with its switch and its piece of wire: so that 40 cm with five joints come to 56 pF and 60 cm
     * with fifteen to 110 pF (computed from hook-up wire in a bundle, 33 to 66 pF/m, HP 34970A manual p. 332).
     */
    private static final double LEAD_PICOFARADS = 19;

    private static final double JOINT_PICOFARADS = 5.4;
    /** A metre of test lead (computed from the same). */
    private static final double FLYING_LEAD_PICOFARADS = 65;

    private final Wiring wiring;
    private final int[] lumpOf;
    private final BitSet held;

    private RiseTimes(Wiring wiring, boolean betweenReadsLow) {
        this.wiring = wiring;
        lumpOf = Lumps.of(wiring);
        held = betweenReadsLow ? wiring.draggedPins() : new BitSet();
    }

    /**
     * Those of a plan's board with these faults.
     *
     * @param betweenReadsLow whether a level between a sure low and a sure high reads low
     */
    public static RiseTimes of(Plan plan, Collection<? extends Fault> faults, boolean betweenReadsLow) {
        return of(Wiring.of(new Layout(plan), faults), betweenReadsLow);
    }

    static RiseTimes of(Wiring wiring, boolean betweenReadsLow) {
        return new RiseTimes(wiring, betweenReadsLow);
    }

    /** What hangs on a pin whose net has so many joints, in picofarads. */
    public static double planned(int joints) {
        return PIN_PICOFARADS + LEAD_PICOFARADS + JOINT_PICOFARADS * joints;
    }

    /** How long a pin that nothing is soldered to takes, in nanoseconds. */
    public static long bareNanos(Controller controller) {
        return nanos(controller, PIN_PICOFARADS);
    }

    /** A pin by its index in the plan; nothing when it never rises. Pins that are bridged pull up together. */
    public OptionalLong nanos(int pin) {
        Layout layout = wiring.layout();
        int lump = lumpOf[pin];
        if (lump == lumpOf[layout.ground] || held.get(pin)) {
            return OptionalLong.empty();
        }
        double picofarads = 0;
        int pins = 0;
        for (int node = 0; node < layout.ground; node++) {
            if (lumpOf[node] == lump) {
                pins += node < layout.pins ? 1 : 0;
                picofarads += picofarads(node);
            }
        }
        return OptionalLong.of(nanos(wiring.plan().controller(), picofarads / pins));
    }

    private double picofarads(int node) {
        Layout layout = wiring.layout();
        if (node >= layout.pins) {
            boolean hasLead = Arrays.stream(layout.leadJoint).anyMatch(joint -> joint == node);
            return JOINT_PICOFARADS + (hasLead ? LEAD_PICOFARADS : 0);
        }
        return PIN_PICOFARADS + (node < layout.leadJoint.length ? 0 : FLYING_LEAD_PICOFARADS);
    }

    /** With a pull-up from the middle of its range. */
    private static long nanos(Controller controller, double picofarads) {
        double ohms =
                (controller.pullUpOhms().weakest() + controller.pullUpOhms().strongest()) / 2;
        double supply = controller.supplyVolts();
        double seconds = ohms * picofarads * 1e-12 * Math.log(supply / (supply - controller.highVolts()));
        return Math.round(seconds * 1e9);
    }
}
