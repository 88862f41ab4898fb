package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One thing that can be wrong with a board, as a change to its wiring.
 *
 * <p>A new kind is one record that implements this, one constant of {@link FaultKind}, and its name below.
 */
public sealed interface Fault
        permits Bridge,
                ComesAndGoes,
                DiodeBypassed,
                DiodeReversed,
                KeyOpen,
                LeadOff,
                LeadsSwapped,
                LinkOpen,
                MirrorImage,
                PinDragged,
                PinLow,
                StripesTurned,
                SwitchHeld,
                WrongNet {
    FaultKind kind();

    /** Makes the wiring as this fault leaves it. */
    void change(Wiring wiring);

    /** The parts that this fault spoils; two faults that share one are never supposed together. */
    List<Part> parts();

    /** The nets, by index, that it sits on. */
    Set<Integer> nets(Plan plan);

    /** The one key that it sits in, where it is no more than that. */
    default OptionalInt onlyKey() {
        return OptionalInt.empty();
    }

    /** One word without spaces that names this fault among all of a plan's, such as {@code open:R2:Q:W}. */
    String code(Plan plan);

    /** What is wrong and where, as the end of a sentence: {@code R2 is open between Q and W}. */
    String says(Plan plan);

    /** Where to put a meter's tips, power off, and what the reading would mean. */
    String meter(Plan plan);

    /** What to do about it, as a sentence for a person with an iron. */
    String repair(Plan plan);
}
