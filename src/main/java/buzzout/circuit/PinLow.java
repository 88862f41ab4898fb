package buzzout.circuit;

import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Set;

/** A pin is tied to ground and reads low whatever is driven. */
public record PinLow(int net) implements Fault {
    @Override
    public FaultKind kind() {
        return FaultKind.PIN_LOW;
    }

    @Override
    public void change(Wiring wiring) {
        wiring.groundPin(net);
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
        return "pin " + on.pin() + " of " + on.name() + " is held low";
    }

    @Override
    public String meter(Plan plan) {
        Net on = plan.nets().get(net);
        return "from controller pin " + on.pin() + " to ground: a beep means that it is held low";
    }

    @Override
    public String repair(Plan plan) {
        Net on = plan.nets().get(net);
        return "Look for solder or a wire between pin " + on.pin() + " (" + on.name()
                + ") and ground; if there is none, the pin may be dead: use another and change the plan.";
    }
}
