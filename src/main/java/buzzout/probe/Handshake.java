package buzzout.probe;

import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** The commands that make a probe sweep a plan's pins, each with the answer to wait for. */
final class Handshake {
    static final String WHO = "who " + ProbeMessage.PROTOCOL;

    /** Short lines suit a probe whose receiver holds 64 bytes while it sweeps. */
    private static final int MOST_ADD_BODY = 50;

    private Handshake() {}

    /** One command; a newer probe may say more behind the answer. */
    record Step(String command, String answer) {
        boolean isAnsweredBy(String line) {
            return line.equals(answer) || line.startsWith(answer + " ");
        }
    }

    static List<Step> of(Plan plan, SettleTime settle) {
        List<Step> steps = new ArrayList<>(listing(plan));
        steps.add(settle.step());
        steps.add(new Step("go", "ok go " + plan.pins().size()));
        return steps;
    }

    /** The commands that list a plan's pins and no others. */
    static List<Step> listing(Plan plan) {
        List<Step> steps = new ArrayList<>();
        steps.add(new Step("forget", "ok forget"));
        StringBuilder add = new StringBuilder("add");
        int listed = 0;
        for (String pin : plan.pins()) {
            if (add.length() + 1 + pin.length() > MOST_ADD_BODY) {
                steps.add(new Step(add.toString(), "ok add " + listed));
                add = new StringBuilder("add");
            }
            add.append(' ').append(pin);
            listed++;
        }
        steps.add(new Step(add.toString(), "ok add " + listed));
        return steps;
    }
}
