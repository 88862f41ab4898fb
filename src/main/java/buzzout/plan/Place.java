package buzzout.plan;

/**
 * Where a key lies, seen from the cap side, in key pitches: x grows to the right and y towards the typist.
 *
 * @param x its left edge
 * @param y its upper edge
 * @param width 1 for an ordinary key
 */
public record Place(double x, double y, double width) {
    public double middle() {
        return x + width / 2;
    }
}
