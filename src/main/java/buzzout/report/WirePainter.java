package buzzout.report;

import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Insulated wire: a coloured line with dark edges, and a pattern for eyes and printers that see no colour. */
final class WirePainter {
    /** By turns along the wires that lie side by side. */
    private static final List<List<Double>> PATTERNS =
            List.of(List.of(), List.of(0.6, 2.0), List.of(2.4, 1.2), List.of(2.4, 0.9, 0.6, 0.9), List.of(1.0, 1.0));

    private WirePainter() {}

    /** The wire of a net along a line that {@code drawn} makes for each stroke. */
    static Stream<Shape> wire(Plan plan, Net net, double width, Function<Stroke, Shape> drawn) {
        Tint tint = WireTint.of(net.colour());
        List<Double> pattern = PATTERNS.get(plan.nets(net.kind()).indexOf(net) % PATTERNS.size());
        Stream<Shape> plain =
                Stream.of(drawn.apply(new Stroke(Tint.INK, width + 0.5)), drawn.apply(new Stroke(tint, width)));
        return pattern.isEmpty()
                ? plain
                : Stream.concat(
                        plain, Stream.of(drawn.apply(new Stroke(isDark(tint) ? Tint.PAPER : Tint.INK, 0.4, pattern))));
    }

    private static boolean isDark(Tint tint) {
        int red = tint.rgb() >> 16;
        int green = tint.rgb() >> 8 & 0xFF;
        int blue = tint.rgb() & 0xFF;
        return 0.3 * red + 0.59 * green + 0.11 * blue < 110;
    }
}
