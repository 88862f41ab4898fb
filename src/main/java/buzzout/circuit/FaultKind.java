package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.List;

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
        return switch (this) {
            case MIRROR_IMAGE -> MirrorImage.all(plan);
            case STRIPES_TURNED -> StripesTurned.all();
            case LINK_OPEN -> LinkOpen.all(plan, false);
            case JUMPER_OFF -> LinkOpen.all(plan, true);
            case LEAD_OFF -> LeadOff.all(plan);
            case LEADS_SWAPPED -> LeadsSwapped.all(plan, true);
            case FAR_LEADS_SWAPPED -> LeadsSwapped.all(plan, false);
            case KEY_OPEN -> KeyOpen.all(plan);
            case DIODE_REVERSED -> DiodeReversed.all(plan);
            case DIODE_BYPASSED -> DiodeBypassed.all(plan);
            case SWITCH_HELD -> SwitchHeld.all(plan);
            case WRONG_NET -> WrongNet.all(plan);
            case BRIDGE -> Bridge.betweenNeighbours(plan);
            case CROSSING_BRIDGED -> Bridge.atCrossings(plan);
            case PIN_LOW -> PinLow.all(plan);
            case PIN_DRAGGED -> PinDragged.all(plan);
            case COMES_AND_GOES -> ComesAndGoes.all(plan);
        };
    }
}
