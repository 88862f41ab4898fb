package buzzout.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tomlj.TomlParseResult;

/** Reads a plan from its TOML text, and tells of everything that is wrong with it. */
public final class PlanReader {
    /** A longer text is no plan. */
    public static final int MOST_CHARACTERS = 1 << 20;

    private static final int MOST_KEYS = 4096;
    private static final int LONGEST_NAME = 60;

    /** A healthy switch settles well within it: 6.2 ms was the longest of sixteen (J. Ganssle, as quoted). */
    private static final double USUAL_BOUNCE_LIMIT_MILLIS = 10;

    private static final double LONGEST_BOUNCE_LIMIT_MILLIS = 1000;

    private static final String A_NET = "a net, such as { pin = \"D0\", keys = \"Q W E\" }";

    private final Problems problems;

    private PlanReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * Reads a plan.
     *
     * @param fileName only for the problems to name
     */
    public static PlanFile read(String text, String fileName) {
        Problems problems = new Problems(fileName);
        Optional<Plan> plan = TomlText.parse(text, problems)
                .flatMap(toml -> new PlanReader(problems).read(toml, new Source(TomlText.withoutMark(text))));
        return new PlanFile(problems.haveErrors() ? Optional.empty() : plan, problems.sorted());
    }

    private Optional<Plan> read(TomlParseResult toml, Source source) {
        Settings file = new Settings(toml, Spot.START, "", source, problems)
                .known(
                        "name",
                        "controller",
                        "stripe",
                        "diodes",
                        "spare",
                        "bounce_limit_ms",
                        "rows",
                        "columns",
                        "layout");
        Optional<String> name = readName(file);
        Optional<Controller> controller = readController(file);
        NetKind stripe = readKind(file, "stripe", "row", "column");
        NetKind diodes = readKind(file, "diodes", "rows", "columns");
        double bounceLimit = readBounceLimit(file);
        Optional<Word> spare = file.text("spare").map(Text::whole);
        List<NetDraft> rows = readNets(file, "rows", NetKind.ROW);
        List<NetDraft> columns = readNets(file, "columns", NetKind.COLUMN);
        List<NetDraft> nets = Stream.concat(rows.stream(), columns.stream()).toList();
        PinChecks.check(nets, spare, controller, problems);
        if (!checkCounts(nets)) {
            return Optional.empty();
        }
        KeyChecks.check(nets, problems);
        Set<String> keys = nets.stream()
                .flatMap(net -> net.joints().stream())
                .map(Word::text)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Map<String, Place> places = LayoutReader.read(file.table("layout", "a table, [layout]"), rows, keys, problems);
        if (problems.haveErrors()) {
            return Optional.empty();
        }
        List<Key> placed = PlanBuilder.keys(nets, places);
        return Optional.of(new Plan(
                name.orElseThrow(),
                controller.orElseThrow(),
                stripe,
                diodes,
                PlanBuilder.nets(nets, placed),
                placed,
                spare.map(Word::text),
                bounceLimit));
    }

    private Optional<String> readName(Settings file) {
        if (!file.has("name")) {
            problems.lack(Spot.START, "the plan has no name; add one at the top, such as name = \"Quayside 46\"");
        }
        return file.text("name").map(Text::whole).map(name -> {
            String text = name.text();
            if (text.isBlank()) {
                problems.error(name.at(), "the plan's name is empty; give it one, such as name = \"Quayside 46\"");
            } else if (text.codePointCount(0, text.length()) > LONGEST_NAME) {
                problems.error(name.at(), "the plan's name is longer than " + LONGEST_NAME + " characters; shorten it");
            } else if (!text.codePoints().allMatch(point -> point == ' ' || Visible.prints(point))) {
                problems.error(
                        name.at(),
                        "the plan's name " + name.quoted() + " has a character that does not print; take it out");
            }
            return text;
        });
    }

    private Optional<Controller> readController(Settings file) {
        String known = Controllers.ALL.stream().map(Controller::name).collect(Collectors.joining(", "));
        if (!file.has("controller")) {
            problems.lack(Spot.START, "the plan has no controller; add one of " + known);
        }
        Optional<Word> name = file.text("controller").map(Text::whole);
        Optional<Controller> controller = name.map(Word::text).flatMap(Controllers::named);
        if (name.isPresent() && controller.isEmpty()) {
            problems.error(name.get().at(), "controller " + name.get().quoted() + " is not known; use one of " + known);
        }
        return controller;
    }

    private NetKind readKind(Settings file, String setting, String row, String column) {
        Optional<Word> word = file.text(setting).map(Text::whole);
        if (word.isPresent() && !List.of(row, column).contains(word.get().text())) {
            problems.error(
                    word.get().at(),
                    setting + " is " + word.get().quoted() + "; make it \"" + row + "\" or \"" + column + "\"");
        }
        return word.filter(is -> is.text().equals(column))
                .map(is -> NetKind.COLUMN)
                .orElse(NetKind.ROW);
    }

    private double readBounceLimit(Settings file) {
        double limit = file.number("bounce_limit_ms").orElse(USUAL_BOUNCE_LIMIT_MILLIS);
        if (!(limit > 0 && limit <= LONGEST_BOUNCE_LIMIT_MILLIS)) {
            problems.error(
                    file.at("bounce_limit_ms"), "bounce_limit_ms must be more than 0 and at most 1000 milliseconds");
        }
        return limit;
    }

    private List<NetDraft> readNets(Settings file, String table, NetKind kind) {
        if (!file.has(table)) {
            problems.lack(
                    Spot.START,
                    "the plan has no " + table + "; add a table [" + table + "] with a line for each " + kind.word());
        }
        List<NetDraft> nets = new ArrayList<>();
        file.table(table, "a table with a line for each " + kind.word()).ifPresent(all -> {
            for (Word name : all.names()) {
                Optional<String> fault = KeyName.fault(name.text());
                if (fault.isPresent()) {
                    problems.unread(name.at(), kind.word() + " name " + name.quoted() + " " + fault.get());
                } else {
                    all.table(name.text(), A_NET)
                            .ifPresent(net -> nets.add(NetReader.read(name.text(), kind, net, problems)));
                }
            }
            if (all.names().isEmpty()) {
                problems.lack(all.at(), "[" + table + "] is empty; add a line for each " + kind.word());
            }
        });
        return nets;
    }

    /** Whether there are few enough nets and keys to go on. */
    private boolean checkCounts(List<NetDraft> nets) {
        Set<String> names = new LinkedHashSet<>();
        for (NetDraft net : nets) {
            if (!names.add(net.name())) {
                problems.error(net.at(), net.name() + " is the name of a row and of a column; give one another name");
            }
        }
        if (nets.size() > Plan.MOST_NETS) {
            problems.error(
                    nets.get(Plan.MOST_NETS).at(),
                    "the plan has " + nets.size() + " rows and columns; " + Plan.MOST_NETS
                            + " is the most, so split the board");
        }
        int joints = nets.stream().mapToInt(net -> net.joints().size()).sum();
        if (joints > 2 * MOST_KEYS) {
            problems.error(Spot.START, "the plan has more than " + MOST_KEYS + " keys; split the board");
        }
        return joints <= 2 * MOST_KEYS;
    }
}
