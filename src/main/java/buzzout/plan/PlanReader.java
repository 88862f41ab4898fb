package buzzout.plan;

import buzzout.toml.Spot;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads a plan from its TOML text, and tells of everything that is wrong with it. */
public final class PlanReader {
    /** A longer text is no plan. */
    public static final int MOST_CHARACTERS = 1 << 20;

    private static final int MOST_KEYS = 4096;
    private static final String A_NET = "a net, such as { pin = \"D0\", keys = \"Q W E\" }";

    private final Problems problems;

    private PlanReader(Problems problems) {
        this.problems = problems;
    }

    /**
     * Reads a plan. Anything may be in the text: it is never refused with an exception.
     *
     * @param fileName only for the problems to name
     */
    public static PlanFile read(String text, String fileName) {
        Problems problems = new Problems(fileName);
        Optional<Plan> plan = TomlText.parse(text, problems)
                .map(file -> file.known(
                        "name",
                        "controller",
                        "stripe",
                        "diodes",
                        "spare",
                        "bounce_limit_ms",
                        "rows",
                        "columns",
                        "layout",
                        "priors"))
                .flatMap(file -> new PlanReader(problems).read(file));
        return new PlanFile(problems.haveErrors() ? Optional.empty() : plan, problems.sorted());
    }

    private Optional<Plan> read(Settings file) {
        Heading heading = Heading.read(file, problems);
        List<NetDraft> rows = readNets(file, "rows", NetKind.ROW);
        List<NetDraft> columns = readNets(file, "columns", NetKind.COLUMN);
        List<NetDraft> nets = new ArrayList<>(rows);
        nets.addAll(columns);
        PinChecks.check(nets, heading.spare(), heading.controller(), problems);
        if (!checkCounts(nets)) {
            return Optional.empty();
        }
        KeyChecks.check(nets, problems);
        Set<String> keys = new LinkedHashSet<>();
        nets.forEach(net -> net.joints().forEach(joint -> keys.add(joint.text())));
        Map<String, Place> places = LayoutReader.read(file.table("layout", "a table, [layout]"), rows, keys, problems);
        Map<String, Double> priors = PriorsReader.read(file.table("priors", "a table, [priors]"), problems);
        return problems.haveErrors() ? Optional.empty() : Optional.of(PlanBuilder.plan(heading, nets, places, priors));
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
                KeyName.fault(name.text())
                        .ifPresent(
                                why -> problems.error(name.at(), kind.word() + " name " + name.quoted() + " " + why));
                all.table(name.text(), A_NET)
                        .ifPresent(net -> nets.add(NetReader.read(Visible.of(name.text()), kind, net, problems)));
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
        int joints = 0;
        for (NetDraft net : nets) {
            joints += net.joints().size();
        }
        if (joints > 2 * MOST_KEYS) {
            problems.error(Spot.START, "the plan has more than " + MOST_KEYS + " keys; split the board");
        }
        return joints <= 2 * MOST_KEYS;
    }
}
