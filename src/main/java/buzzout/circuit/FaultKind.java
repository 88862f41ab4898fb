package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;

/** The kinds of fault that can be supposed, in the order in which changes to the wiring are made. */
public enum FaultKind {
    MIRROR_IMAGE("mirrored"),
    STRIPES_TURNED("turned"),
    LINK_OPEN("open"),
    JUMPER_OFF("jumper-off"),
    LEAD_OFF("lead-off"),
    LEADS_SWAPPED("swapped"),
    FAR_LEADS_SWAPPED("far-swapped"),
    KEY_OPEN("dead"),
    DIODE_REVERSED("reversed"),
    DIODE_BYPASSED("bypassed"),
    SWITCH_HELD("held"),
    WRONG_NET("wrong-net"),
    BRIDGE("bridge"),
    CROSSING_BRIDGED("crossing"),
    PIN_LOW("pin-low"),
    PIN_DRAGGED("pin-dragged"),
    COMES_AND_GOES("loose");

    /** Those of a connection that does not conduct. */
    public static final List<FaultKind> OPEN = List.of(LINK_OPEN, JUMPER_OFF, LEAD_OFF, KEY_OPEN);

    private final String code;

    FaultKind(String code) {
        this.code = code;
    }

    /** The word that begins this kind's fault codes. */
    public String code() {
        return code;
    }

    /** Every fault of this kind that the plan's board can have. */
    public List<Fault> all(Plan plan) {
        return Collections.unmodifiableList(found(plan));
    }

    private List<Fault> found(Plan plan) {
        return switch (this) {
            case MIRROR_IMAGE -> MirrorImage.all(plan);
            case STRIPES_TURNED -> StripesTurned.all();
            case LINK_OPEN -> LinkOpen.all(plan, false);
            case JUMPER_OFF -> LinkOpen.all(plan, true);
            case LEAD_OFF -> each(plan.nets().size(), LeadOff::new);
            case LEADS_SWAPPED -> LeadsSwapped.all(plan, true);
            case FAR_LEADS_SWAPPED -> LeadsSwapped.all(plan, false);
            case KEY_OPEN -> each(plan.keys().size(), KeyOpen::new);
            case DIODE_REVERSED -> each(plan.keys().size(), DiodeReversed::new);
            case DIODE_BYPASSED -> each(plan.keys().size(), DiodeBypassed::new);
            case SWITCH_HELD -> each(plan.keys().size(), SwitchHeld::new);
            case WRONG_NET -> WrongNet.all(plan);
            case BRIDGE -> Bridge.betweenNeighbours(plan);
            case CROSSING_BRIDGED -> Bridge.atCrossings(plan);
            case PIN_LOW -> each(plan.nets().size(), PinLow::new);
            case PIN_DRAGGED -> each(plan.nets().size(), PinDragged::new);
            case COMES_AND_GOES -> ComesAndGoes.all(plan);
        };
    }

    /** One for each key or net. */
    private static List<Fault> each(int count, IntFunction<Fault> fault) {
        List<Fault> faults = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            faults.add(fault.apply(index));
        }
        return faults;
    }
}
