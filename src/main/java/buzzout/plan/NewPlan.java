package buzzout.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The text of a starting plan for a regular board, for a person to edit. */
public final class NewPlan {
    private NewPlan() {}

    /** Why a controller cannot take a board of this size, and what would do; empty when it can. */
    public static Optional<String> obstacle(int rows, int columns, Controller controller) {
        if (rows < 1 || columns < 1) {
            return Optional.of("a board has one row and one column at least; ask for a size such as 4x12");
        }
        long needed = (long) rows + columns;
        String size = "a board of " + rows + "x" + columns + " needs " + needed + " pins";
        if (needed > Plan.MOST_NETS) {
            return Optional.of(size + "; " + Plan.MOST_NETS + " is the most, so split the board");
        }
        int pins = usablePins(controller).size();
        if (needed <= pins) {
            return Optional.empty();
        }
        String larger = Controllers.ALL.stream()
                .filter(other -> pinsWithoutTrap(other).size() >= needed)
                .findFirst()
                .orElse(Controllers.ATMEGA2560)
                .name();
        return Optional.of(size + "; the " + controller.name() + " has " + pins + ", the " + larger + " would do");
    }

    /**
     * A plan with keys {@code 1A}, {@code 1B} and so on, as many on each row as there are columns. Pins without a trap
     * are used first, and a flying lead gets one if any is left.
     *
     * @throws IllegalArgumentException with the {@link #obstacle}, where there is one
     */
    public static String text(int rows, int columns, Controller controller) {
        obstacle(rows, columns, controller).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        List<String> pins = usablePins(controller);
        String rowLines = IntStream.range(0, rows)
                .mapToObj(row -> net(
                        "R" + (row + 1),
                        pins.get(row),
                        IntStream.range(0, columns).mapToObj(column -> key(row, column))))
                .collect(Collectors.joining());
        String columnLines = IntStream.range(0, columns)
                .mapToObj(column -> net(
                        "C" + (column + 1),
                        pins.get(rows + column),
                        IntStream.range(0, rows).mapToObj(row -> key(row, column))))
                .collect(Collectors.joining());
        String spare = pinsWithoutTrap(controller).stream()
                .skip((long) rows + columns)
                .findFirst()
                .map(pin -> "spare = \"" + pin + "\"  # a free pin, for the flying lead that touches joints\n")
                .orElse("# spare = \"\"  # a free pin, for the flying lead that touches joints\n");
        return String.format(Locale.ROOT, """
                # The plan of a board. Change what differs, then check it again.
                name = "New %dx%d"
                controller = "%s"
                stripe = "row"   # what the diodes' stripes face, "row" or "column"
                diodes = "rows"  # the nets made of diode legs, "rows" or "columns"
                %s
                # Keys stand in solder order, here from left to right, and are called what you like.
                # A net can also say
                #   lead = "1B"               the key where its lead joins, if not the first
                #   colour = "red"            its wire's colour
                #   jumpers = ["1A 1B"]       links that bridge a gap between parts of the plate
                #   branches = ["1B X Y"]      what leaves the chain, after the key that it leaves at
                [rows]
                %s
                # The same keys again, here from top to bottom.
                [columns]
                %s
                # Seen from the cap side. Without lines, each row is drawn as one.
                [layout]
                # lines = ["1A 1B", "2A 2B"]
                widths = {}  # such as { "1A" = 2 }; 1 unless said
                gaps = {}    # free space left of a key, such as { "1B" = 0.5 }
                """, rows, columns, controller.name(), spare, rowLines, columnLines);
    }

    private static String net(String name, String pin, Stream<String> keys) {
        return name + " = { pin = \"" + pin + "\", keys = \"" + keys.collect(Collectors.joining(" ")) + "\" }\n";
    }

    /** Such as {@code 1A}, {@code 1Z}, {@code 1AA}: never the name of a row or a column. */
    private static String key(int row, int column) {
        String letter = String.valueOf((char) ('A' + column % 26));
        return (row + 1) + (column < 26 ? "" : String.valueOf((char) ('A' + column / 26 - 1))) + letter;
    }

    /** Those without a trap first. */
    private static List<String> usablePins(Controller controller) {
        Stream<String> withTrap = controller.pins().stream()
                .filter(pin -> controller.trap(pin).isPresent()
                        && controller.reserved(pin).isEmpty());
        return Stream.concat(pinsWithoutTrap(controller).stream(), withTrap).toList();
    }

    private static List<String> pinsWithoutTrap(Controller controller) {
        return controller.pins().stream()
                .filter(pin -> controller.trap(pin).isEmpty()
                        && controller.reserved(pin).isEmpty())
                .toList();
    }
}
