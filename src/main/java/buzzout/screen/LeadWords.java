package buzzout.screen;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Met;
import buzzout.session.Touch;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** What the flying lead meets, in words: {@code on C4}. */
final class LeadWords {
    /** The nets that are named; a lead on ground meets all of them. */
    private static final int FEW = 4;

    private LeadWords() {}

    static String of(Plan plan, Touch touch) {
        String asked = touch.called()
                .map(joint -> " at " + plan.nets().get(joint.net(plan)).name() + ", "
                        + plan.keys().get(joint.key()).spoken())
                .orElse("");
        return "lead" + asked + ": " + of(plan, Met.of(plan, touch.pairs()));
    }

    static String of(Plan plan, Met met) {
        if (met.isNothing()) {
            return "on nothing";
        } else if (met.bothWays().isEmpty()
                && met.towards().size() == plan.nets().size()) {
            return "on ground, or on a pin that is held low";
        }
        List<String> words = new ArrayList<>();
        if (!met.bothWays().isEmpty()) {
            words.add("on " + names(plan, met.bothWays()) + (met.bothWays().size() > 1 ? ", which meet" : ""));
        }
        if (!met.towards().isEmpty()) {
            words.add("through a diode to " + names(plan, met.towards()));
        }
        if (!met.from().isEmpty()) {
            words.add("through a diode from " + names(plan, met.from()));
        }
        List<Key> down = met.keysDown(plan);
        String key = down.size() == 1 ? "; " + down.get(0).spoken() + " is down" : "";
        return String.join(", and ", words) + key;
    }

    private static String names(Plan plan, Collection<Integer> nets) {
        String named =
                nets.stream().limit(FEW).map(net -> plan.nets().get(net).name()).collect(Collectors.joining(" and "));
        return nets.size() > FEW ? named + " and " + (nets.size() - FEW) + " more" : named;
    }
}
