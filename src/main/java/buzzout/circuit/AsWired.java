package buzzout.circuit;

import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a plan would have to say for a board to be right as it is wired, where nothing is wrong but leads on other pins,
 * or diodes that all sit the other way round.
 *
 * @param pins the new pin of each net that gets another, by its name
 * @param stripe what the stripes face
 */
public record AsWired(Map<String, String> pins, NetKind stripe) {
    public AsWired {
        pins = Collections.unmodifiableMap(new LinkedHashMap<>(pins));
    }

    /** Whether a plan can take the fault for right. */
    public static boolean canBe(Fault fault) {
        return fault instanceof LeadsSwapped || fault instanceof MirrorImage || fault instanceof StripesTurned;
    }

    /** Takes these faults for right; others count for nothing. */
    public static AsWired of(Plan plan, Collection<? extends Fault> faults) {
        List<String> pins = new ArrayList<>(plan.nets().stream().map(Net::pin).toList());
        NetKind stripe = plan.stripe();
        for (Fault fault :
                faults.stream().sorted(Comparator.comparing(Fault::kind)).toList()) {
            if (fault instanceof LeadsSwapped swapped) {
                Collections.swap(pins, swapped.net(), swapped.otherNet());
            } else if (fault instanceof MirrorImage) {
                Collections.reverse(pins.subList(plan.nets(NetKind.ROW).size(), pins.size()));
            } else if (fault instanceof StripesTurned) {
                stripe = stripe.other();
            }
        }
        Map<String, String> changed = new LinkedHashMap<>();
        for (int net = 0; net < pins.size(); net++) {
            if (!pins.get(net).equals(plan.nets().get(net).pin())) {
                changed.put(plan.nets().get(net).name(), pins.get(net));
            }
        }
        return new AsWired(changed, stripe);
    }
}
