package buzzout.toml;

/** A place in a text: line and column from 1, columns in code points. */
public record Spot(int line, int column) {
    public static final Spot START = new Spot(1, 1);
}
