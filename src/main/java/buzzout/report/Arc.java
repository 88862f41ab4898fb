package buzzout.report;

import java.util.List;
import java.util.stream.IntStream;

/** The way of a link from joint to joint: straight, or a quadratic curve that goes round something. */
record Arc(Point from, Point bend, Point to) {
    private static final int SAMPLES = 24;

    /**
     * With its middle out of the straight by half of {@code bow}: below a level line, beside an upright one.
     *
     * @param handed 1 or −1, so that a mirrored board's picture is the mirrored picture
     */
    static Arc bowed(Point from, Point to, double bow, int handed) {
        double length = from.to(to);
        double right = (to.y() - from.y()) / length * bow;
        double down = -(to.x() - from.x()) / length * bow;
        boolean level = Math.abs(to.x() - from.x()) >= Math.abs(to.y() - from.y());
        boolean turn = level ? (to.x() > from.x()) : (to.y() > from.y()) != (handed > 0);
        return new Arc(from, from.towards(to, 0.5).moved(turn ? -right : right, turn ? -down : down), to);
    }

    boolean isLevel() {
        return Math.abs(to.x() - from.x()) >= Math.abs(to.y() - from.y());
    }

    private boolean isStraight() {
        return bend.fromLine(from, to) < 0.01;
    }

    Shape drawn(Stroke stroke) {
        return isStraight() ? Shape.Line.between(from, to, stroke) : new Shape.Curve(from, bend, to, stroke);
    }

    Point at(double part) {
        return from.towards(bend, part).towards(bend.towards(to, part), part);
    }

    /** How near it comes to the nearest of some points. */
    double clearance(List<Point> others) {
        return IntStream.range(0, SAMPLES)
                .mapToDouble(i -> {
                    Point start = at((double) i / SAMPLES);
                    Point end = at((i + 1.0) / SAMPLES);
                    return others.stream()
                            .mapToDouble(other -> other.fromLine(start, end))
                            .min()
                            .orElse(Double.MAX_VALUE);
                })
                .min()
                .orElse(Double.MAX_VALUE);
    }

    /** Shortened by so many millimetres at both ends. */
    Arc without(double ends) {
        double part = Math.min(0.4, ends / from.to(to));
        Point start = at(part);
        Point end = at(1 - part);
        Point middle = at(0.5);
        Point half = start.towards(end, 0.5);
        return new Arc(start, half.towards(middle, 2), end);
    }

    /** Room for a word below a level one, near its end on the left of the cap side, where no wire goes down. */
    Point belowStart(int handed) {
        Point start = handed * from.x() < handed * to.x() ? from : to;
        return start.moved(handed * 5.2, 5);
    }

    /** Room for a word beside an upright one. */
    Point beside() {
        return at(0.75).towards(from.towards(to, 0.75), -0.8).moved(0, 0.8);
    }
}
