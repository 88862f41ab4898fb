package buzzout.circuit;

import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Set;

/** A pin is loaded, as by a LED to ground, and rises only to a level between low and high. */
public record PinDragged(int net) implements Fault {
    @Override
    public FaultKind kind() {
        return FaultKind.PIN_DRAGGED;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.dragPin(net);
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part.PinPart(net));
    }

    @Override
    public Set<Integer> nets(Plan plan) {
        return Set.of(net);
    }

    @Override
    public String code(Plan plan) {
        return kind().code() + ":" + plan.nets().get(net).name();
    }

    @Override
    public String says(Plan plan) {
        Net on = plan.nets().get(net);
        return "pin " + on.pin() + " of " + on.name() + " cannot rise: something loads it";
    }

    @Override
    public String meter(Plan plan) {
        Net on = plan.nets().get(net);
        return "from controller pin " + on.pin() + " to ground in the diode range: a reading near 2 V means a LED";
    }

    @Override
    public String repair(Plan plan) {
        Net on = plan.nets().get(net);
        return "Look for a LED or a strap on pin " + on.pin() + " (" + on.name()
                + ") of the controller; remove it or use another pin and change the plan.";
    }
}
