package buzzout.report;

import buzzout.report.Shape.Box;
import java.util.List;

/** A diode as it looks: a body with a stripe at one end. */
final class DiodeSymbol {
    private static final double BODY = 5;
    private static final double THICK = 2.4;
    private static final double STRIPE = 1.1;
    private static final double STRIPE_FROM_END = 0.55;

    private DiodeSymbol() {}

    /**
     * Upright or lying, half way between two points.
     *
     * @param stripeAtTo whether the stripe is at the end towards {@code to}
     */
    static List<Shape> between(Point from, Point to, boolean stripeAtTo) {
        Point middle = from.towards(to, 0.5);
        double out = BODY / 2 - STRIPE_FROM_END - STRIPE / 2;
        Point stripe = middle.towards(stripeAtTo ? to : from, out / middle.to(to));
        boolean upright = Math.abs(to.y() - from.y()) > Math.abs(to.x() - from.x());
        return List.of(
                upright
                        ? Box.around(middle, THICK, BODY, Tint.PAPER, new Stroke(Tint.INK, 0.35))
                        : Box.around(middle, BODY, THICK, Tint.PAPER, new Stroke(Tint.INK, 0.35)),
                upright
                        ? Box.around(stripe, THICK, STRIPE, Tint.INK, Stroke.NONE)
                        : Box.around(stripe, STRIPE, THICK, Tint.INK, Stroke.NONE));
    }
}
