package buzzout.plan;

/**
 * One switch with its diode.
 *
 * @param index its place in the plan's keys
 * @param row index of its row in the plan's nets
 * @param column index of its column in the plan's nets
 */
public record Key(int index, String name, int row, int column, Place place) {
    /** The name as it stands in a sentence: in quotes where it could be taken for punctuation. */
    public String spoken() {
        for (int at = 0; at < name.length(); at++) {
            if (!Character.isLetterOrDigit(name.charAt(at))) {
                return '"' + name + '"';
            }
        }
        return name;
    }

    public int net(NetKind kind) {
        return kind == NetKind.ROW ? row : column;
    }
}
