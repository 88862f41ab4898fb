package buzzout.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Writes a plan as the file that reads as the same plan. */
public final class PlanText {
    private static final int COMMENT_WIDTH = 78;

    private final Plan plan;

    private PlanText(Plan plan) {
        this.plan = plan;
    }

    /** The file's text; {@code remarks} are sentences that stand as comments above everything else. */
    public static String of(Plan plan, List<String> remarks) {
        return remarks.stream().map(PlanText::comment).collect(Collectors.joining()) + new PlanText(plan).text();
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        text.append("name = ").append(quoted(plan.name())).append('\n');
        text.append("controller = ").append(quoted(plan.controller().name())).append('\n');
        text.append("stripe = \"").append(plan.stripe().word()).append("\"\n");
        text.append("diodes = \"").append(plan.diodes().word()).append("s\"\n");
        plan.sparePin()
                .ifPresent(pin -> text.append("spare = ").append(quoted(pin)).append('\n'));
        text.append("bounce_limit_ms = ")
                .append(number(plan.bounceLimitMillis()))
                .append('\n');
        text.append("\n[rows]\n");
        plan.nets(NetKind.ROW).forEach(net -> text.append(net(net)));
        text.append("\n[columns]\n");
        plan.nets(NetKind.COLUMN).forEach(net -> text.append(net(net)));
        return text.append(layout()).toString();
    }

    private String net(Net net) {
        List<String> chain = new ArrayList<>();
        List<String> branches = new ArrayList<>();
        List<String> jumpers = new ArrayList<>();
        List<String> part = chain;
        for (int joint = 0; joint < net.joints().size(); joint++) {
            int at = joint;
            int from = net.links().stream()
                    .filter(link -> link.to() == at)
                    .mapToInt(Link::from)
                    .findFirst()
                    .orElse(-1);
            if (joint > 0 && from != joint - 1) {
                if (part != chain) {
                    branches.add(String.join(" ", part));
                }
                part = new ArrayList<>(List.of(key(net, from)));
            }
            part.add(key(net, joint));
        }
        if (part != chain) {
            branches.add(String.join(" ", part));
        }
        net.links().stream()
                .filter(Link::jumper)
                .forEach(link -> jumpers.add(key(net, link.from()) + " " + key(net, link.to())));
        return name(net.name()) + " = { pin = " + quoted(net.pin())
                + net.colour().map(colour -> ", colour = " + quoted(colour)).orElse("")
                + ", keys = " + quoted(String.join(" ", chain))
                + list("branches", branches)
                + list("jumpers", jumpers)
                + (net.leadJoint() == 0 ? "" : ", lead = " + quoted(key(net, net.leadJoint())))
                + " }\n";
    }

    private String key(Net net, int joint) {
        return plan.keys().get(net.joints().get(joint)).name();
    }

    private static String list(String name, List<String> texts) {
        return texts.isEmpty()
                ? ""
                : ", " + name + " = [" + texts.stream().map(PlanText::quoted).collect(Collectors.joining(", ")) + "]";
    }

    private String layout() {
        List<List<Key>> lines = new ArrayList<>();
        for (Key key : plan.keys()) {
            while (lines.size() <= key.place().y()) {
                lines.add(new ArrayList<>());
            }
            lines.get((int) key.place().y()).add(key);
        }
        StringBuilder text = new StringBuilder("\n[layout]\nlines = [\n");
        for (List<Key> line : lines) {
            text.append("    ")
                    .append(quoted(line.stream().map(Key::name).collect(Collectors.joining(" "))))
                    .append(",\n");
        }
        text.append("]\n").append(sizes("widths", key -> key.place().width(), 1));
        double[] gaps = new double[plan.keys().size()];
        for (List<Key> line : lines) {
            double x = 0;
            for (Key key : line) {
                gaps[key.index()] = key.place().x() - x;
                x = key.place().x() + key.place().width();
            }
        }
        return text.append(sizes("gaps", key -> gaps[key.index()], 0)).toString();
    }

    private String sizes(String name, ToDoubleFunction<Key> size, double usual) {
        String sizes = plan.keys().stream()
                .filter(key -> !number(size.applyAsDouble(key)).equals(number(usual)))
                .map(key -> name(key.name()) + " = " + number(size.applyAsDouble(key)))
                .collect(Collectors.joining(", "));
        return sizes.isEmpty() ? "" : name + " = { " + sizes + " }\n";
    }

    /** Rounded to what is left of sums. */
    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.6f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "").replaceAll("^-0$", "0");
    }

    private static String name(String text) {
        return text.matches("[A-Za-z0-9_-]+") ? text : quoted(text);
    }

    /** A basic string of TOML; a plan's names have no control characters. */
    static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private static String comment(String remark) {
        StringBuilder lines = new StringBuilder();
        StringBuilder line = new StringBuilder("#");
        for (String word : Visible.of(remark).split(" ", -1)) {
            if (line.length() + 1 + word.length() > COMMENT_WIDTH && line.length() > 1) {
                lines.append(line).append('\n');
                line = new StringBuilder("#  ");
            }
            line.append(' ').append(word);
        }
        return lines.append(line).append('\n').toString();
    }
}
