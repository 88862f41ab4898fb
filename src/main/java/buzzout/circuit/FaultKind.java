package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.function.Function;
import java.util.stream.Stream;

/** The kinds of fault that can be supposed, in the order in which changes to the wiring are made. */
public enum FaultKind {
    MIRROR_IMAGE("mirrored", MirrorImage::all),
    STRIPES_TURNED("turned", plan -> StripesTurned.all()),
    LINK_OPEN("open", plan -> LinkOpen.all(plan, false)),
    JUMPER_OFF("jumper-off", plan -> LinkOpen.all(plan, true)),
    LEAD_OFF("lead-off", LeadOff::all),
    LEADS_SWAPPED("swapped", plan -> LeadsSwapped.all(plan, true)),
    FAR_LEADS_SWAPPED("far-swapped", plan -> LeadsSwapped.all(plan, false)),
    KEY_OPEN("dead", KeyOpen::all),
    DIODE_REVERSED("reversed", DiodeReversed::all),
    DIODE_BYPASSED("bypassed", DiodeBypassed::all),
    SWITCH_HELD("held", SwitchHeld::all),
    WRONG_NET("wrong-net", WrongNet::all),
    BRIDGE("bridge", Bridge::betweenNeighbours),
    CROSSING_BRIDGED("crossing", Bridge::atCrossings),
    PIN_LOW("pin-low", PinLow::all),
    PIN_DRAGGED("pin-dragged", PinDragged::all),
    COMES_AND_GOES("loose", ComesAndGoes::all);

    private final String code;
    private final Function<Plan, Stream<Fault>> all;

    FaultKind(String code, Function<Plan, Stream<Fault>> all) {
        this.code = code;
        this.all = all;
    }

    /** The word that begins this kind's fault codes. */
    public String code() {
        return code;
    }

    /** Every fault of this kind that the plan's board can have. */
    public Stream<Fault> all(Plan plan) {
        return all.apply(plan);
    }
}
