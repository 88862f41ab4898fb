package buzzout.session;

import buzzout.circuit.Pair;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What the named keys of a session joined. Only a press whose key was named counts: of others, a plan that may be wrong
 * would have to say which key they were.
 *
 * @param notes sentences about keys that gave no clear answer
 */
record Answers(List<Join> joins, List<String> notes) {
    static Answers of(Session session) {
        Map<Integer, Press> last = new HashMap<>();
        for (Press press : session.presses()) {
            if (press.called().isPresent() && !press.inCompany()) {
                // A press that brought something says more than one that brought nothing.
                last.merge(
                        press.called().getAsInt(),
                        press,
                        (before, now) -> now.pairs().isEmpty() ? before : now);
            }
        }
        List<Join> joins = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        List<Key> silent = new ArrayList<>();
        List<Key> untested = new ArrayList<>();
        for (Key key : session.plan().keys()) {
            Press press = last.get(key.index());
            if (press == null) {
                untested.add(key);
            } else if (press.pairs().isEmpty()) {
                silent.add(key);
            } else {
                read(session.plan(), key, press, joins, notes);
            }
        }
        if (!silent.isEmpty()) {
            notes.add(names(silent) + (silent.size() == 1 ? " was" : " were") + " pressed and nothing came.");
        }
        if (!untested.isEmpty()) {
            notes.add(names(untested) + (untested.size() == 1 ? " has" : " have") + " not been pressed by name.");
        }
        return new Answers(joins, notes);
    }

    private static void read(Plan plan, Key key, Press press, List<Join> joins, List<String> notes) {
        List<Pair> pairs = press.pairs().list();
        Pair first = pairs.get(0);
        boolean bothWays = press.pairs().contains(first.turned());
        if (pairs.size() > (bothWays ? 2 : 1)) {
            String all = pairs.stream()
                    .map(pair -> pin(plan, pair.low()) + "→" + pin(plan, pair.reads()))
                    .collect(Collectors.joining(", "));
            notes.add(key.spoken() + " joins more than two pins (" + all + "): find the bridge first.");
            return;
        }
        if (bothWays) {
            notes.add(key.spoken() + " conducts both ways: its diode is bypassed or missing.");
        }
        joins.add(new Join(key.index(), first, bothWays));
    }

    static String pin(Plan plan, int pin) {
        return plan.pins().get(pin);
    }

    static String names(List<Key> keys) {
        if (keys.size() == 1) {
            return keys.get(0).spoken();
        }
        String but = keys.subList(0, keys.size() - 1).stream().map(Key::spoken).collect(Collectors.joining(", "));
        return but + " and " + keys.get(keys.size() - 1).spoken();
    }
}
