package buzzout.report;

import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.stream.Collectors;

/** The plan in short, so that the reader needs no other file: each net with its pin and its keys in solder order. */
final class PlanSection {
    private PlanSection() {}

    static void put(Markup page, Plan plan) {
        page.open("section", "id", "plan").put("h2", "The board as planned").line();
        page.put(
                "p",
                Wording.counted(plan.keys().size(), "key") + " on an "
                        + plan.controller().name() + "; the stripe of each diode faces its "
                        + plan.stripe().word() + ". Keys stand in solder order.");
        page.open("table").open("thead").open("tr");
        page.put("th", "Net").put("th", "Pin").put("th", "Wire").put("th", "Keys");
        page.close().close().open("tbody").line();
        for (Net net : plan.nets()) {
            page.open("tr")
                    .put("td", net.name())
                    .put("td", net.pin())
                    .put("td", net.colour().orElse(""));
            page.put(
                    "td",
                    net.joints().stream().map(plan.keys()::get).map(Key::name).collect(Collectors.joining("  ")));
            page.close().line();
        }
        page.close().close().close().line();
    }
}
