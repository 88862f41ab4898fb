package buzzout.screen;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Press;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** One press in words: {@code Q pressed: R1→C1, as planned}. */
final class PressWords {
    /** The pairs that are named; a bridge can close many more. */
    private static final int FEW = 3;

    private PressWords() {}

    static String of(Plan plan, Press press) {
        if (press.pairs().isEmpty()) {
            return key(plan, press.key()) + " pressed: nothing came";
        }
        if (plan.isMadeUp()) {
            return key(plan, press.called()) + " pressed: " + pairs(plan, press.pairs());
        }
        String company = press.inCompany() ? ", other keys down" : "";
        return who(plan, press) + ": " + pairs(plan, press.pairs()) + judged(plan, press) + company;
    }

    private static String who(Plan plan, Press press) {
        String presumed = key(plan, press.presumed());
        boolean asCalled = press.called().isEmpty() || press.called().equals(press.presumed());
        return asCalled ? presumed + " pressed" : key(plan, press.called()) + " called, " + presumed + " answered";
    }

    private static String key(Plan plan, OptionalInt key) {
        return key.isPresent() ? plan.keys().get(key.getAsInt()).spoken() : "a key";
    }

    private static String pairs(Plan plan, Pairs pairs) {
        List<Pair> all = pairs.list();
        String named = all.stream().limit(FEW).map(pair -> name(plan, pair)).collect(Collectors.joining(", "));
        return all.size() > FEW ? named + " and " + (all.size() - FEW) + " more" : named;
    }

    private static String judged(Plan plan, Press press) {
        if (press.called().isPresent() && !press.called().equals(press.presumed())) {
            return ", planned "
                    + name(plan, planned(plan, plan.keys().get(press.called().getAsInt())));
        }
        if (press.presumed().isEmpty()) {
            return ", which no key of the plan does";
        }
        Pair planned = planned(plan, plan.keys().get(press.presumed().getAsInt()));
        Pairs seen = press.pairs();
        if (seen.equals(Pairs.of(planned))) {
            return ", as planned";
        } else if (seen.equals(Pairs.of(planned.turned()))) {
            return ", the wrong way round";
        } else if (seen.equals(Pairs.of(planned, planned.turned()))) {
            return ", both ways";
        } else if (seen.contains(planned)) {
            return ", with company";
        }
        return ", planned " + name(plan, planned);
    }

    /** Current flows towards the net that the stripe faces, so that one is driven low. */
    private static Pair planned(Plan plan, Key key) {
        return new Pair(key.net(plan.stripe()), key.net(plan.stripe().other()));
    }

    private static String name(Plan plan, Pair pair) {
        return net(plan, pair.low()) + "→" + net(plan, pair.reads());
    }

    private static String net(Plan plan, int pin) {
        return pin < plan.nets().size() ? plan.nets().get(pin).name() : "flying lead";
    }
}
