package buzzout.report;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Key;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import buzzout.session.Press;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.List;
import java.util.stream.Collectors;

/** What the probe saw: with no key pressed, and from each key that is not as it should be. */
final class SeenSections {
    /** Pairs that are named one by one; a bridge can close many more. */
    private static final int FEW = 8;

    private final Markup page;
    private final Session session;
    private final List<KeyState> states;
    private final Plan plan;

    private SeenSections(Markup page, Session session) {
        this.page = page;
        this.session = session;
        this.states = session.states();
        this.plan = session.plan();
    }

    static void put(Markup page, Session session) {
        SeenSections sections = new SeenSections(page, session);
        sections.quietCheck();
        sections.keys();
    }

    private void quietCheck() {
        page.open("section", "id", "quiet-check").put("h2", "Quiet check").line();
        if (session.stage() == Stage.NO_PROBE || session.stage() == Stage.QUIET_CHECK) {
            page.put("p", "It was not done, so nothing is known of bridges, held switches and stuck pins.");
        } else if (session.quiet().isEmpty()) {
            page.put(
                    "p",
                    "With no key pressed, nothing conducted: no switch is held and no pin is stuck, and no bridge"
                            + " shows without a press.");
        } else {
            page.put("p", "With no key pressed, this conducted: " + pairs(session.quiet()) + ".");
            arrow();
        }
        page.close().line();
    }

    private void keys() {
        List<Key> odd = plan.keys().stream()
                .filter(key -> state(key) != KeyState.GOOD && state(key) != KeyState.UNTESTED)
                .toList();
        if (odd.isEmpty()) {
            return;
        }
        page.open("section", "id", "keys").put("h2", "Keys that are not good").line();
        page.open("table").open("thead").open("tr");
        page.put("th", "Key").put("th", "State").put("th", "Planned").put("th", "Its last press closed");
        page.close().close().open("tbody").line();
        for (Key key : odd) {
            page.open("tr")
                    .put("td", key.name())
                    .put("td", BoardPicture.sign(state(key)) + " " + state(key).word());
            page.put("td", pair(planned(key))).put("td", closed(key)).close().line();
        }
        page.close().close().line();
        if (session.quiet().isEmpty()) {
            arrow();
        }
        page.close().line();
    }

    private void arrow() {
        page.put(
                        "p",
                        "R1→C2 says that C2 reads low while R1 is driven low: current can flow from C2 to R1.",
                        "class",
                        "small")
                .line();
    }

    private String closed(Key key) {
        List<Press> presses = session.presses().stream()
                .filter(press -> press.key().stream().anyMatch(index -> index == key.index()))
                .toList();
        if (presses.isEmpty()) {
            return "no press of it came";
        }
        Pairs pairs = presses.get(presses.size() - 1).pairs();
        return pairs.isEmpty() ? "nothing" : pairs(pairs);
    }

    private String pairs(Pairs pairs) {
        List<Pair> all = pairs.list();
        String named = all.stream().limit(FEW).map(this::pair).collect(Collectors.joining(", "));
        return all.size() > FEW ? named + " and " + (all.size() - FEW) + " more" : named;
    }

    private String pair(Pair pair) {
        return net(pair.low()) + "→" + net(pair.reads());
    }

    private String net(int pin) {
        return pin < plan.nets().size() ? plan.nets().get(pin).name() : "flying lead";
    }

    /** Current flows towards the net that the stripe faces, so that one is driven low. */
    private Pair planned(Key key) {
        NetKind low = plan.stripe();
        return new Pair(key.net(low), key.net(low.other()));
    }

    private KeyState state(Key key) {
        return states.get(key.index());
    }
}
