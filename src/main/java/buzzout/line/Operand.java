package buzzout.line;

/**
 * A word known by its place.
 *
 * @param label what help calls it
 */
public record Operand(String label, Times times, String description) {
    /** One that must be there. */
    public static Operand of(String label, String description) {
        return new Operand(label, Times.ONCE, description);
    }

    /** One that may be left out. */
    public static Operand optional(String label, String description) {
        return new Operand(label, Times.AT_MOST_ONCE, description);
    }

    /** All words that are left, at least one. */
    public static Operand many(String label, String description) {
        return new Operand(label, Times.AT_LEAST_ONCE, description);
    }

    /** A word, and all behind it, which are described elsewhere. */
    public static Operand handedOn(String label) {
        return new Operand(label, Times.ANY, "");
    }

    /** It as help shows it. */
    String shown() {
        if (times == Times.AT_LEAST_ONCE) {
            return label + "...";
        }
        return times == Times.AT_MOST_ONCE ? "[" + label + "]" : label;
    }
}
