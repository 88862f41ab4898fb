package buzzout.report;

/** A point of a drawing in millimetres: x grows to the right, y downwards. */
public record Point(double x, double y) {
    Point moved(double right, double down) {
        return new Point(x + right, y + down);
    }

    Point scaled(double scale) {
        return new Point(x * scale, y * scale);
    }

    double to(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The point on the way to another, 0 here and 1 there. */
    Point towards(Point other, double part) {
        return new Point(x + (other.x - x) * part, y + (other.y - y) * part);
    }

    /** How near a straight piece between two points comes. */
    double fromLine(Point from, Point to) {
        double length = from.to(to);
        if (length == 0) {
            return to(from);
        }
        double part = ((x - from.x) * (to.x - from.x) + (y - from.y) * (to.y - from.y)) / (length * length);
        return to(from.towards(to, Math.max(0, Math.min(1, part))));
    }
}
