package buzzout.toml;

/** Ends the reading of a line, or of all the lines of a value. */
final class Stumble extends Exception {
    private static final long serialVersionUID = 1L;
    private static final int MOST_SHOWN = 60;

    private final transient Slip slip;

    private Stumble(Spot at, String message) {
        super(message, null, false, false);
        slip = new Slip(at, message);
    }

    /**
     * @param said what is there
     * @param todo what to do about it
     */
    static Stumble over(Spot at, String said, String todo) {
        return new Stumble(at, "not TOML: " + said + "; " + todo);
    }

    static Stumble twice(Name name, int firstLine) {
        return new Stumble(
                name.at(), "\"" + cut(name.text()) + "\" is set twice, first on line " + firstLine + "; keep one");
    }

    /** The start of a word, which may be as long as a file. */
    static String cut(String word) {
        return word.codePointCount(0, word.length()) <= MOST_SHOWN
                ? word
                : word.substring(0, word.offsetByCodePoints(0, MOST_SHOWN)) + "...";
    }

    Slip slip() {
        return slip;
    }
}
