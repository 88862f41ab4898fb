package buzzout.report;

import java.util.List;

/** One mark on a drawing. Closed shapes are always filled. */
public sealed interface Shape {
    /** The same, made so many times as large and then moved. */
    Shape placed(double scale, double right, double down);

    /** Straight pieces from point to point. */
    record Line(List<Point> points, Stroke stroke) implements Shape {
        public Line {
            points = List.copyOf(points);
        }

        static Line between(Point from, Point to, Stroke stroke) {
            return new Line(List.of(from, to), stroke);
        }

        @Override
        public Line placed(double scale, double right, double down) {
            return new Line(
                    points.stream()
                            .map(point -> point.scaled(scale).moved(right, down))
                            .toList(),
                    stroke.scaled(scale));
        }
    }

    /** A quadratic Bézier curve. */
    record Curve(Point from, Point bend, Point to, Stroke stroke) implements Shape {
        @Override
        public Curve placed(double scale, double right, double down) {
            return new Curve(
                    from.scaled(scale).moved(right, down),
                    bend.scaled(scale).moved(right, down),
                    to.scaled(scale).moved(right, down),
                    stroke.scaled(scale));
        }
    }

    /** A rectangle, given by its upper left corner. */
    record Box(Point corner, double width, double height, Tint fill, Stroke edge) implements Shape {
        static Box around(Point middle, double width, double height, Tint fill, Stroke edge) {
            return new Box(middle.moved(-width / 2, -height / 2), width, height, fill, edge);
        }

        @Override
        public Box placed(double scale, double right, double down) {
            return new Box(
                    corner.scaled(scale).moved(right, down), width * scale, height * scale, fill, edge.scaled(scale));
        }
    }

    record Disc(Point middle, double radius, Tint fill, Stroke edge) implements Shape {
        @Override
        public Disc placed(double scale, double right, double down) {
            return new Disc(middle.scaled(scale).moved(right, down), radius * scale, fill, edge.scaled(scale));
        }
    }

    /** A ring: what lies inside stays seen. */
    record Ring(Point middle, double radius, Stroke edge) implements Shape {
        @Override
        public Ring placed(double scale, double right, double down) {
            return new Ring(middle.scaled(scale).moved(right, down), radius * scale, edge.scaled(scale));
        }
    }

    /**
     * One line of text. Dark text has a rim of paper.
     *
     * @param at the end or the middle of its base line, as the anchor says
     * @param size of the letters' em in millimetres
     */
    record Words(Point at, double size, Anchor anchor, boolean bold, Tint tint, String text) implements Shape {
        /** Twice the rim's width, as a part of the size. */
        static final double RIM = 0.25;

        @Override
        public Words placed(double scale, double right, double down) {
            return new Words(at.scaled(scale).moved(right, down), size * scale, anchor, bold, tint, text);
        }
    }

    /** Which part of a text lies at its point. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }
}
