package buzzout.screen;

import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.report.Likelihood;
import buzzout.screen.CloseUp.Between;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The joint to look at, large, on the solder side: switches as boxes, diodes with their stripes as planned, brackets
 * around suspected joints, an X where something is open or bridged.
 */
final class CloseUpPainter {
    private static final int CELL = 15;

    private final Plan plan;
    private final CloseUp closeUp;
    private final Pen pen;
    private final String joint;
    private final String stripe;

    private CloseUpPainter(CloseUp closeUp, Pen pen) {
        this.plan = closeUp.plan();
        this.closeUp = closeUp;
        this.pen = pen;
        this.joint = pen.ascii() ? "o" : "●";
        this.stripe = pen.ascii() ? "#" : "█";
    }

    static void paint(View view, Pen pen) {
        Finding finding = view.chosen().orElseThrow();
        int index = view.closeUp().orElseThrow();
        CloseUp closeUp = CloseUp.of(view.plan(), finding.suspects().get(index).fault());
        int suspects = finding.suspects().size();
        Heading.paint(
                pen,
                "Finding " + (view.focus().finding().orElse(0) + 1)
                        + (suspects > 1 ? ", suspect " + (index + 1) + " of " + suspects : ""),
                "as you see it with the iron in your hand");
        new CloseUpPainter(closeUp, pen).paint(finding.suspects().get(index));
    }

    private void paint(Suspect suspect) {
        int row = 1;
        row = paragraph(
                row,
                Likelihood.percent(suspect.probability()) + ": "
                        + closeUp.fault().says(plan),
                Ink.STRONG);
        Pen picture = pen.part(1, row + 1, pen.columns() - 2, height());
        if (!closeUp.keys().isEmpty()) {
            new CloseUpPainter(closeUp, picture).picture();
            row += 1 + height();
            row = paragraph(
                    row,
                    "Drawn as planned: look at the brackets" + (hasCross() ? " and the X" : "") + ". The stripe "
                            + stripe + " faces the " + plan.stripe().word() + ".",
                    Ink.PLAIN);
        }
        paragraph(row, "Repair: unplug first. " + closeUp.fault().repair(plan), Ink.PLAIN);
    }

    private int paragraph(int row, String says, Ink ink) {
        int at = row;
        for (String line : pen.wrap(says, pen.columns() - 2, 0)) {
            pen.put(1, at++, line, ink);
        }
        return at;
    }

    private int height() {
        return closeUp.keys().isEmpty()
                ? 0
                : closeUp.kind() == NetKind.ROW ? 12 : 3 * closeUp.keys().size() + 1;
    }

    private boolean hasCross() {
        return IntStream.range(0, closeUp.keys().size() - 1)
                .boxed()
                .flatMap(at -> Stream.of(NetKind.values()).map(kind -> closeUp.between(at, kind)))
                .anyMatch(between -> between == Between.SUSPECT || between == Between.BRIDGE);
    }

    private void picture() {
        for (int at = 0; at < closeUp.keys().size(); at++) {
            if (closeUp.kind() == NetKind.ROW) {
                level(at);
            } else {
                upright(at);
            }
        }
    }

    /** A key's branch from its column's joint down to its row's, and what joins the rows to the next. */
    private void level(int at) {
        Key key = closeUp.keys().get(at);
        int middle = at * CELL + CELL / 2;
        boolean last = at == closeUp.keys().size() - 1;
        if (!last) {
            along(at, NetKind.COLUMN, middle, 1);
            along(at, NetKind.ROW, middle, 9);
        }
        if (at == 0 && closeUp.goesOn(false)) {
            pen.put(middle - 6, 9, "──────", Ink.PLAIN);
        }
        if (last && closeUp.goesOn(true)) {
            pen.put(middle + 1, 9, "──────", Ink.PLAIN);
        }
        int row = 1;
        joint(key, NetKind.COLUMN, middle, row++);
        boolean diodeFirst = plan.diodes() == NetKind.COLUMN;
        row = diodeFirst ? diode(middle, row) : switchBox(key, middle, row);
        row = diodeFirst ? switchBox(key, middle, row) : diode(middle, row);
        joint(key, NetKind.ROW, middle, row);
        centred(middle, 0, number(key, NetKind.COLUMN));
        centred(middle, 10, number(key, NetKind.ROW));
        lead(key, NetKind.ROW).ifPresent(text -> centred(middle, 11, text));
    }

    private int switchBox(Key key, int middle, int row) {
        String name = pen.clean(key.name());
        String shown = name.length() > 9 ? name.substring(0, 9) : name;
        int half = Math.max(1, (pen.width(shown) + 1) / 2);
        pen.put(middle - half - 1, row, "┌" + "─".repeat(half) + "┴" + "─".repeat(half) + "┐", Ink.PLAIN);
        pen.put(middle - half - 1, row + 1, "│", Ink.PLAIN);
        centred(middle, row + 1, shown);
        pen.put(middle + half + 1, row + 1, "│", Ink.PLAIN);
        pen.put(middle - half - 1, row + 2, "└" + "─".repeat(half) + "┬" + "─".repeat(half) + "┘", Ink.PLAIN);
        return row + 3;
    }

    private int diode(int middle, int row) {
        boolean stripeBelow = plan.stripe() == NetKind.ROW;
        pen.put(middle - 1, row, "┌┴┐", Ink.PLAIN);
        pen.put(middle - 1, row + 1, stripeBelow ? "│ │" : "│" + stripe + "│", Ink.PLAIN);
        pen.put(middle - 1, row + 2, stripeBelow ? "│" + stripe + "│" : "│ │", Ink.PLAIN);
        pen.put(middle - 1, row + 3, "└┬┘", Ink.PLAIN);
        return row + 4;
    }

    /** From a joint to the next on the right. */
    private void along(int at, NetKind kind, int middle, int row) {
        Between between = closeUp.between(at, kind);
        int room = CELL - 1;
        switch (between) {
            case LINK -> pen.put(middle + 1, row, "─".repeat(room), Ink.PLAIN);
            case JUMPER -> {
                pen.put(middle + 1, row, "═".repeat(room), Ink.PLAIN);
                pen.put(middle + 4, row, " jumper ", Ink.PLAIN);
            }
            case SUSPECT, BRIDGE -> {
                pen.put(
                        middle + 1,
                        row,
                        (between == Between.BRIDGE ? "- " : "─").repeat(room).substring(0, room),
                        Ink.PLAIN);
                pen.put(middle + room / 2, row, " X ", Ink.WRONG);
            }
            case NOTHING -> {}
        }
    }

    /** A key's branch from its column's joint on the left to its row's, and what leads down to the next. */
    private void upright(int at) {
        Key key = closeUp.keys().get(at);
        int row = at * 3 + (closeUp.goesOn(false) ? 1 : 0);
        int left = 24;
        if (at == 0 && closeUp.goesOn(false)) {
            pen.put(left, row - 1, "│", Ink.PLAIN);
        }
        String name = pen.clean(key.name());
        String box = "┤ " + name + " ├";
        String body = plan.stripe() == NetKind.ROW ? "┤  " + stripe + "├" : "┤" + stripe + "  ├";
        boolean diodeFirst = plan.diodes() == NetKind.COLUMN;
        String branch = "───" + (diodeFirst ? body + "──" + box : box + "──" + body) + "───";
        int right = left + 1 + pen.width(branch);
        pen.put(left + 1, row, branch, Ink.PLAIN);
        joint(key, NetKind.COLUMN, left, row);
        joint(key, NetKind.ROW, right, row);
        String number = lead(key, NetKind.COLUMN).map(text -> text + "  ").orElse("") + number(key, NetKind.COLUMN);
        pen.put(left - 2 - pen.width(number), row, number, Ink.PLAIN);
        pen.put(right + 3, row, number(key, NetKind.ROW), Ink.PLAIN);
        if (at < closeUp.keys().size() - 1) {
            down(closeUp.between(at, NetKind.COLUMN), left, row);
            down(closeUp.between(at, NetKind.ROW), right, row);
        } else if (closeUp.goesOn(true)) {
            pen.put(left, row + 1, "│", Ink.PLAIN);
        }
    }

    private void down(Between between, int column, int row) {
        switch (between) {
            case LINK -> {
                pen.put(column, row + 1, "│", Ink.PLAIN);
                pen.put(column, row + 2, "│", Ink.PLAIN);
            }
            case JUMPER -> {
                pen.put(column, row + 1, "║ jumper", Ink.PLAIN);
                pen.put(column, row + 2, "║", Ink.PLAIN);
            }
            case SUSPECT -> {
                pen.put(column, row + 1, "X", Ink.WRONG);
                pen.put(column, row + 2, "│", Ink.PLAIN);
            }
            case BRIDGE -> {
                pen.put(column, row + 1, "X", Ink.WRONG);
                pen.put(column, row + 2, "X", Ink.WRONG);
            }
            case NOTHING -> {}
        }
    }

    private void joint(Key key, NetKind kind, int column, int row) {
        boolean suspected = closeUp.suspected().contains(new Joint(key.index(), kind));
        if (suspected) {
            pen.put(column - 1, row, "(" + joint + ")", Ink.WRONG);
        } else {
            pen.put(column, row, joint, Ink.PLAIN);
        }
    }

    private String number(Key key, NetKind kind) {
        return new Joint(key.index(), kind).number(plan);
    }

    private Optional<String> lead(Key key, NetKind kind) {
        Net net = plan.nets().get(key.net(kind));
        return net.joint(net.leadJoint()).key() == key.index() ? Optional.of("lead to " + net.pin()) : Optional.empty();
    }

    private void centred(int middle, int row, String text) {
        pen.put(middle - pen.width(text) / 2, row, text, Ink.PLAIN);
    }
}
