package buzzout.report;

import buzzout.circuit.Concerned;
import buzzout.diagnosis.Finding;
import buzzout.plan.Key;
import buzzout.plan.Place;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The board as an inline picture: every key with its mark, and the numbers of the findings at the keys to look at. */
final class BoardPicture {
    /** Which side of the board is seen; from the solder side left and right are mirrored. */
    enum Side {
        CAP("Seen from the cap side, as one types."),
        SOLDER("Seen from the solder side, as one holds it to solder: left and right are mirrored.");

        private final String says;

        Side(String says) {
            this.says = says;
        }
    }

    /** Units of the picture to a key pitch. */
    private static final int PITCH = 60;

    private static final int GAP = 2;
    private static final double LARGEST_NAME = 18;
    private static final double SMALLEST_NAME = 9;

    /** About the width of an ordinary letter and of a wide one, such as a Chinese one, in type sizes. */
    private static final double LETTER = 0.68;

    private static final double WIDE_LETTER = 1;

    private final Markup page;
    private final Outcome outcome;
    private final Plan plan;
    private final List<KeyState> states;
    private final Side side;
    private final double left;
    private final double top;
    private final double right;
    private final double bottom;

    private BoardPicture(Markup page, Outcome outcome, Side side) {
        this.page = page;
        this.outcome = outcome;
        this.plan = outcome.plan();
        this.states = outcome.session().states();
        this.side = side;
        List<Place> places = plan.keys().stream().map(Key::place).toList();
        left = places.stream().mapToDouble(Place::x).min().orElse(0);
        top = places.stream().mapToDouble(Place::y).min().orElse(0);
        right = places.stream()
                .mapToDouble(place -> place.x() + place.width())
                .max()
                .orElse(1);
        bottom = places.stream().mapToDouble(Place::y).max().orElse(0) + 1;
    }

    static void put(Markup page, Outcome outcome, Side side) {
        new BoardPicture(page, outcome, side).put();
    }

    private void put() {
        String box = number(-12) + " " + number(-14) + " " + number((right - left) * PITCH + 24) + " "
                + number((bottom - top) * PITCH + 26);
        page.open("figure");
        page.open("svg", "viewBox", box, "role", "img", "aria-label", described());
        page.line();
        plan.keys().forEach(this::key);
        plan.keys().forEach(this::tag);
        page.close();
        String numbers = outcome.diagnosis().findings().isEmpty() ? "" : " Numbers are those of the findings below.";
        page.put("figcaption", side.says + numbers).close().line();
    }

    private String described() {
        return "The keys of " + plan.name() + (side == Side.CAP ? " from the cap side." : " from the solder side.")
                + " The table of marks says the same in words.";
    }

    private void key(Key key) {
        KeyState state = states.get(key.index());
        double width = key.place().width() * PITCH - 2 * GAP;
        double x = x(key) + GAP;
        double y = y(key) + GAP;
        page.open("g").put("title", key.name() + ": " + state.word());
        rectangle(capClass(state), x, y, width, PITCH - 2 * GAP, 6);
        name(key.name(), x + 6, y, width - 12);
        page.put(
                "text",
                plan.row(key).name() + " " + plan.column(key).name(),
                "class",
                "nets",
                "x",
                number(x + 6),
                "y",
                number(y + 52));
        page.put("text", sign(state), "class", signClass(state), "x", number(x + width - 5), "y", number(y + 42));
        page.close().line();
    }

    private void rectangle(String styleClass, double x, double y, double width, double height, double rounding) {
        page.open(
                        "rect",
                        "class",
                        styleClass,
                        "x",
                        number(x),
                        "y",
                        number(y),
                        "width",
                        number(width),
                        "height",
                        number(height),
                        "rx",
                        number(rounding))
                .close();
    }

    private void name(String name, double x, double y, double room) {
        double ems = name.codePoints()
                .mapToDouble(letter -> letter > 0x10FF ? WIDE_LETTER : LETTER)
                .sum();
        double size = Math.max(SMALLEST_NAME, Math.min(LARGEST_NAME, room / ems));
        List<String> attributes =
                new ArrayList<>(List.of("x", number(x), "y", number(y + 25), "font-size", number(size)));
        if (ems * size > room) {
            attributes.addAll(List.of("textLength", number(room), "lengthAdjust", "spacingAndGlyphs"));
        }
        page.put("text", name, attributes.toArray(String[]::new));
    }

    /** The numbers of the findings that one looks at this key for. */
    private void tag(Key key) {
        List<Finding> findings = outcome.diagnosis().findings();
        List<String> numbers = new ArrayList<>();
        for (int at = 0; at < findings.size(); at++) {
            boolean concerned = findings.get(at).suspects().stream()
                    .flatMap(suspect -> Concerned.keys(plan, suspect.fault()))
                    .anyMatch(index -> index == key.index());
            if (concerned) {
                numbers.add(String.valueOf(at + 1));
            }
        }
        if (!numbers.isEmpty()) {
            String text = numbers.stream().collect(Collectors.joining(","));
            double width = 13 + 9.0 * text.length();
            double x = x(key) + key.place().width() * PITCH - width - 1;
            double y = y(key) - 11;
            rectangle("tag", x, y, width, 22, 11);
            page.put("text", text, "class", "number", "x", number(x + width / 2), "y", number(y + 16.5))
                    .line();
        }
    }

    private double x(Key key) {
        Place place = key.place();
        double from = side == Side.CAP ? place.x() - left : right - place.x() - place.width();
        return from * PITCH;
    }

    private double y(Key key) {
        return (key.place().y() - top) * PITCH;
    }

    private static String capClass(KeyState state) {
        return switch (state) {
            case GOOD -> "cap";
            case UNTESTED -> "cap untested";
            default -> "cap wrong";
        };
    }

    private static String signClass(KeyState state) {
        return switch (state) {
            case GOOD -> "sign";
            case UNTESTED -> "sign waits";
            default -> "sign bad";
        };
    }

    /** The mark, kept from being drawn as a coloured picture where a font has one for it. */
    static String sign(KeyState state) {
        return state.mark(false) + "\ufe0e";
    }

    private static String number(double units) {
        String text = String.format(Locale.ROOT, "%.1f", units);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
