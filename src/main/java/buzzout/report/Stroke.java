package buzzout.report;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param width in millimetres; nothing is drawn at 0
 * @param dashes lengths of dash and gap by turns in millimetres; a whole line when empty
 */
public record Stroke(Tint tint, double width, List<Double> dashes) {
    static final Stroke NONE = new Stroke(Tint.INK, 0);

    public Stroke {
        dashes = List.copyOf(dashes);
    }

    Stroke(Tint tint, double width) {
        this(tint, width, List.of());
    }

    Stroke scaled(double scale) {
        return new Stroke(
                tint, width * scale, dashes.stream().map(dash -> dash * scale).toList());
    }
}
