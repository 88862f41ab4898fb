package buzzout.report;

import java.util.List;
import java.util.stream.Stream;

/**
 * A picture as lines, shapes and words on a sheet, later ones over earlier ones; {@link SvgDrawing} and {@link
 * PdfDrawing} write it.
 *
 * @param width of the sheet in millimetres
 * @param height of the sheet in millimetres
 */
public record Drawing(double width, double height, List<Shape> shapes) {
    public Drawing {
        shapes = List.copyOf(shapes);
    }

    /** Its shapes, made so many times as large and then moved. */
    Stream<Shape> placed(double scale, double right, double down) {
        return shapes.stream().map(shape -> shape.placed(scale, right, down));
    }
}
