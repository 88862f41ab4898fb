package buzzout.report;

import buzzout.circuit.Fault;
import buzzout.circuit.KeyOpen;
import buzzout.circuit.LeadOff;
import buzzout.circuit.LinkOpen;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Link;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import buzzout.plan.SolderSide;
import buzzout.session.AllAtOnce;
import buzzout.session.CommonPath;
import buzzout.session.FlexCheck;
import buzzout.session.Session;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What holding keys showed, in words: a flex check's dropouts and whom they blame, and combinations' answers. */
public final class HeldText {
    private static final int MOST_BLAMED = 4;

    private HeldText() {}

    /** What to do with the keys of the combination that is called, a sentence; only while one is. */
    public static String toHold(Session session) {
        AllAtOnce all = session.allAtOnce();
        int done = all.tried().size();
        return "Hold " + keys(session.plan(), all.called()) + " together for a moment, then let go. " + (done + 1)
                + " of " + (done + all.ahead().size()) + ".";
    }

    /** One sentence for each way in which keys dropped out together, most frequent first. */
    public static List<String> dropouts(Plan plan, FlexCheck flex) {
        List<String> sentences = new ArrayList<>();
        for (FlexCheck.Pattern each : flex.patterns()) {
            sentences.add(dropouts(plan, each));
        }
        return Collections.unmodifiableList(sentences);
    }

    private static String dropouts(Plan plan, FlexCheck.Pattern pattern) {
        boolean several = pattern.dropped().size() > 1;
        String stayed = pattern.stayed().isEmpty() ? "" : "; " + keys(plan, pattern.stayed()) + " stayed";
        return keys(plan, pattern.dropped()) + " dropped out " + (several ? "together " : "") + times(pattern.times())
                + ", for " + millis(pattern.longestMicros()) + " ms at most" + stayed + ": " + blame(plan, pattern);
    }

    private static String blame(Plan plan, FlexCheck.Pattern pattern) {
        List<Fault> common = CommonPath.of(plan, pattern.dropped(), pattern.stayed());
        if (common.isEmpty()) {
            return "no one joint lies on the way of "
                    + (pattern.dropped().size() > 1 ? "all of these" : "this one")
                    + (pattern.stayed().isEmpty() ? "" : " and of none that stayed");
        }
        List<String> named = common.stream()
                .limit(MOST_BLAMED)
                .map(fault -> place(plan, fault))
                .toList();
        return "look at " + String.join(", or ", named)
                + (common.size() > MOST_BLAMED ? ", or " + (common.size() - MOST_BLAMED) + " more" : "");
    }

    private static String place(Plan plan, Fault fault) {
        if (fault instanceof LinkOpen open) {
            Net net = plan.nets().get(open.net());
            Link link = net.links().get(open.link());
            return "the " + (open.jumper() ? "jumper" : "link") + " of " + net.name() + " between "
                    + SolderSide.between(plan, net, link);
        } else if (fault instanceof LeadOff off) {
            return "the lead of " + plan.nets().get(off.net()).name();
        } else if (fault instanceof KeyOpen open) {
            return "the switch, the diode and the joints of "
                    + plan.keys().get(open.key()).spoken();
        }
        return fault.says(plan);
    }

    /** A combination's answer beside what was computed. */
    public static String answer(Session session, AllAtOnce.Tried tried) {
        Plan plan = session.plan();
        return keys(plan, tried.keys()) + " together: " + difference(session, tried);
    }

    private static String difference(Session session, AllAtOnce.Tried tried) {
        Pairs computed = AllAtOnce.computed(session.plan(), tried.keys()).minus(session.quiet());
        Pairs more = tried.answer().minus(computed);
        Pairs fewer = computed.minus(tried.answer());
        List<String> parts = new ArrayList<>();
        if (!more.isEmpty()) {
            parts.add(pairs(session.plan(), more) + " appeared, which nothing should close");
        }
        if (!fewer.isEmpty()) {
            parts.add(pairs(session.plan(), fewer) + " did not come");
        }
        return parts.isEmpty() ? "as computed" : String.join("; ", parts);
    }

    /** How many combinations were held, and what that proves. */
    public static String combinations(Session session) {
        List<AllAtOnce.Tried> tried = session.allAtOnce().tried();
        long well = tried.stream().filter(each -> isAsComputed(session, each)).count();
        long keys =
                tried.stream().flatMap(each -> each.keys().stream()).distinct().count();
        return well == tried.size()
                ? tried.size() + (tried.size() == 1 ? " combination" : " combinations") + " of " + keys
                        + " keys answered as computed: nothing appeared in company that no key closes alone"
                : (tried.size() - well) + " of " + tried.size() + " combinations did not answer as computed";
    }

    public static boolean isAsComputed(Session session, AllAtOnce.Tried tried) {
        return AllAtOnce.isAsComputed(session.plan(), session.quiet(), tried.keys(), tried.answer());
    }

    /** Names in reading order, such as {@code Q, W and A}. */
    public static String keys(Plan plan, Collection<Integer> keys) {
        List<String> names =
                keys.stream().sorted().map(key -> plan.keys().get(key).spoken()).toList();
        int last = names.size() - 1;
        return last < 1
                ? names.stream().findFirst().orElse("")
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    private static String pairs(Plan plan, Pairs pairs) {
        return pairs.list().stream().map(pair -> pair(plan, pair)).collect(Collectors.joining(", "));
    }

    private static String pair(Plan plan, Pair pair) {
        return pin(plan, pair.low()) + "→" + pin(plan, pair.reads());
    }

    private static String pin(Plan plan, int pin) {
        return pin < plan.nets().size() ? plan.nets().get(pin).name() : "flying lead";
    }

    private static String times(int times) {
        return times == 1 ? "once" : times == 2 ? "twice" : times + " times";
    }

    /** Such as {@code 12.3}. */
    public static String millis(long micros) {
        return String.format(Locale.ROOT, "%.1f", micros / 1000.0);
    }
}
