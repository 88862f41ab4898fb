package buzzout.plan;

import buzzout.toml.Spot;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads a plan to learn from: a plan that may be wrong, or a file that knows no rows and columns yet, only a name, a
 * controller, a layout and, where the person knows them, the pins that are wired:
 *
 * <pre>
 * name = "Panel"
 * controller = "ATmega32U4"
 * pins = "D0 D1 D2 F0 F1"
 * [layout]
 * lines = ["A B C", "D E F"]
 * </pre>
 */
public final class LayoutFile {
    private static final int MOST_KEYS = 4096;

    private final Problems problems;

    private LayoutFile(Problems problems) {
        this.problems = problems;
    }

    /** Reads a file. A layout comes back as a plan whose rows and columns are made up. */
    public static PlanFile read(String text, String fileName) {
        Problems problems = new Problems(fileName);
        Optional<Settings> file = TomlText.parse(text, problems);
        if (file.filter(settings -> !settings.has("rows") && !settings.has("columns"))
                .isEmpty()) {
            return PlanReader.read(text, fileName);
        }
        Optional<Plan> plan = file.map(
                        settings -> settings.known("name", "controller", "pins", "spare", "bounce_limit_ms", "layout"))
                .flatMap(new LayoutFile(problems)::read);
        return new PlanFile(problems.haveErrors() ? Optional.empty() : plan, problems.sorted());
    }

    private Optional<Plan> read(Settings file) {
        Heading heading = Heading.read(file, problems);
        Optional<Settings> layout = file.table("layout", "a table, [layout]");
        Set<String> keys = new LinkedHashSet<>();
        layout.filter(table -> table.has("lines"))
                .ifPresent(table -> table.texts("lines")
                        .forEach(line -> line.words().forEach(word -> {
                            KeyName.fault(word.text())
                                    .ifPresent(
                                            why -> problems.error(word.at(), "key name " + word.quoted() + " " + why));
                            keys.add(word.text());
                        })));
        if (keys.isEmpty() || keys.size() > MOST_KEYS) {
            problems.lack(
                    layout.map(table -> table.at("lines")).orElse(Spot.START),
                    keys.isEmpty()
                            ? "the file has neither rows and columns nor a layout; add [layout] with lines = [\"Q W E\"]"
                            : "the layout has more than " + MOST_KEYS + " keys; split the board");
            return Optional.empty();
        }
        Map<String, Place> places = LayoutReader.read(layout, List.of(), keys, problems);
        List<Word> named = file.texts("pins").stream()
                .flatMap(text -> text.words().stream())
                .toList();
        Set<String> once = new LinkedHashSet<>();
        List<NetDraft> drafts = named.stream()
                .filter(pin -> {
                    boolean first = once.add(pin.text());
                    if (!first) {
                        problems.error(pin.at(), "pin " + pin.quoted() + " is named twice; take one out");
                    }
                    return first;
                })
                .map(pin -> new NetDraft(
                        "the board",
                        NetKind.ROW,
                        pin.at(),
                        Optional.of(pin),
                        List.of(),
                        List.of(),
                        0,
                        Optional.empty()))
                .toList();
        PinChecks.check(drafts, heading.spare(), heading.controller(), problems);
        if (problems.haveErrors()) {
            return Optional.empty();
        }
        Controller controller = heading.controller().orElseThrow();
        List<String> pins = named.isEmpty()
                ? pins(controller, heading)
                : named.stream().map(Word::text).toList();
        Optional<String> obstacle = FirstGuess.obstacle(keys.size(), pins.size());
        if (obstacle.isPresent()) {
            problems.error(file.at("pins"), obstacle.get());
            return Optional.empty();
        }
        return Optional.of(FirstGuess.of(
                heading.name(),
                controller,
                pins,
                heading.spare().map(Word::text),
                heading.bounceLimitMillis(),
                places));
    }

    /** All that can be probed, but for the flying lead's. */
    private static List<String> pins(Controller controller, Heading heading) {
        return controller.pins().stream()
                .filter(pin -> controller.reserved(pin).isEmpty())
                .filter(pin -> heading.spare()
                        .filter(spare -> spare.text().equals(pin))
                        .isEmpty())
                .toList();
    }
}
