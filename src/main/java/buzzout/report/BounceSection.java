package buzzout.report;

import buzzout.plan.Plan;
import buzzout.session.Bounces;
import buzzout.session.Session;
import java.util.Locale;

/** How long contacts bounced: the keys that bounced longest, with how often that was too long. */
final class BounceSection {
    private static final int MOST_KEYS = 8;

    private BounceSection() {}

    static void put(Markup page, Session session) {
        Plan plan = session.plan();
        Bounces bounces = session.bounces();
        page.open("section", "id", "bounce").put("h2", "Bounce").line();
        page.put("p", BounceText.sum(plan, bounces)).line();
        if (bounces.presses() > 0) {
            page.open("table").open("thead").open("tr");
            page.put("th", "Key").put("th", "Presses").put("th", "Pressing, ms").put("th", "Letting go, ms");
            page.put("th", "Too long").close().close().open("tbody").line();
            bounces.keys().stream().limit(MOST_KEYS).forEach(key -> {
                page.open("tr").put("td", plan.keys().get(key.key()).name());
                page.put("td", String.valueOf(key.presses()))
                        .put("td", millis(key.longestPressing()))
                        .put("td", millis(key.longestLettingGo()));
                page.put("td", key.over() == 0 ? "never" : key.over() + " of " + key.presses());
                page.close().line();
            });
            page.close().close();
        }
        page.close().line();
    }

    private static String millis(long micros) {
        return String.format(Locale.ROOT, "%.1f", micros / 1000.0);
    }
}
