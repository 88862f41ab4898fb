package buzzout.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks that each net has a pin of its own that the controller has and that can be probed. */
final class PinChecks {
    private final Optional<Controller> controller;
    private final Problems problems;
    private final Map<String, String> takenBy = new HashMap<>();

    private PinChecks(Optional<Controller> controller, Problems problems) {
        this.controller = controller;
        this.problems = problems;
    }

    static void check(List<NetDraft> nets, Optional<Word> spare, Optional<Controller> controller, Problems problems) {
        PinChecks checks = new PinChecks(controller, problems);
        nets.forEach(net -> net.pin().ifPresent(pin -> checks.check(pin, net.name())));
        spare.ifPresent(pin -> checks.check(pin, "the flying lead"));
    }

    private void check(Word pin, String user) {
        String first = takenBy.putIfAbsent(pin.text(), user);
        if (first != null) {
            problems.error(
                    pin.at(),
                    "pin " + pin.quoted() + " is used by " + first + " and " + user + "; give one another pin");
        } else {
            controller.ifPresent(on -> check(pin, user, on));
        }
    }

    private void check(Word pin, String user, Controller on) {
        if (!on.pins().contains(pin.text())) {
            String hint = on.pins().stream()
                    .filter(pin.text()::equalsIgnoreCase)
                    .findFirst()
                    .map(meant -> "did you mean \"" + meant + "\"?")
                    .orElse("it has " + PinRanges.of(on.pins()));
            problems.error(
                    pin.at(), "pin " + pin.quoted() + " of " + user + " is not on the " + on.name() + "; " + hint);
            return;
        }
        String named = "pin " + pin.text() + " of " + user + " ";
        on.reserved(pin.text()).ifPresent(why -> problems.error(pin.at(), named + why + "; use another pin"));
        on.trap(pin.text()).ifPresent(why -> problems.note(pin.at(), named + why));
    }
}
