package buzzout.plan;

import org.tomlj.TomlPosition;

/** A place in a text: line and column from 1, columns in code points. */
record Spot(int line, int column) {
    static final Spot START = new Spot(1, 1);

    static Spot of(TomlPosition position) {
        return new Spot(position.line(), position.column());
    }
}
