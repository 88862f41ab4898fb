package buzzout.circuit;

import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Every fault that can be supposed of a plan's board. */
public final class Catalogue {
    private Catalogue() {}

    public static List<Fault> of(Plan plan) {
        List<Fault> all = new ArrayList<>();
        for (FaultKind kind : FaultKind.values()) {
            all.addAll(kind.all(plan));
        }
        return Collections.unmodifiableList(all);
    }

    /** The fault with this code; a code cut short before a colon means the first that it begins. */
    public static Optional<Fault> find(Plan plan, String code) {
        String firstWord = code.split(":", 2)[0];
        List<Fault> ofKind = new ArrayList<>();
        for (FaultKind kind : FaultKind.values()) {
            if (kind.code().equals(firstWord)) {
                ofKind.addAll(kind.all(plan));
            }
        }
        Optional<Fault> begun = Optional.empty();
        for (Fault fault : ofKind) {
            String whole = fault.code(plan);
            if (whole.equals(code)) {
                return Optional.of(fault);
            }
            if (begun.isEmpty() && whole.startsWith(code + ":")) {
                begun = Optional.of(fault);
            }
        }
        return begun;
    }
}
