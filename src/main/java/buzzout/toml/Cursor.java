package buzzout.toml;

/** A place in a text, which moves on. */
final class Cursor {
    static final int END = -1;

    private final String text;
    private int index;
    private int line = 1;
    private int lineStart;
    /** How many more characters than code points there are in the line so far. */
    private int pairs;

    Cursor(String text) {
        this.text = text;
    }

    int line() {
        return line;
    }

    Spot spot() {
        return new Spot(line, index - lineStart - pairs + 1);
    }

    /** The code point here; half of one that has no other half as it is. */
    int here() {
        return index < text.length() ? text.codePointAt(index) : END;
    }

    /** Whether the text goes on so. */
    boolean sees(String next) {
        return text.startsWith(next, index);
    }

    boolean isAtLineEnd() {
        return index == text.length() || sees("\n") || sees("\r\n");
    }

    /** Whether nothing but blanks stands after the character here, on its line. */
    boolean isBlankAfter() {
        int at = pastBlanks(index + 1);
        return text.startsWith("\n", at) || text.startsWith("\r\n", at);
    }

    /** The value of so many hexadecimal digits after the character here; -1 where there are fewer. */
    int hexadecimal(int digits) {
        int value = 0;
        for (int i = index + 1; i <= index + digits; i++) {
            int digit = i < text.length() && text.charAt(i) < 0x80 ? Character.digit(text.charAt(i), 16) : -1;
            if (digit < 0 || value > Character.MAX_CODE_POINT) {
                return -1;
            }
            value = value * 16 + digit;
        }
        return value;
    }

    void returnToLineStart() {
        index = lineStart;
        pairs = 0;
    }

    /** Whether this line begins with a name and an equals sign, or with a header. */
    boolean looksLikeASetting() {
        int at = pastBlanks(index);
        if (at < text.length() && text.charAt(at) == '[') {
            at = pastBlanks(text.startsWith("[[", at) ? at + 2 : at + 1);
            return at < text.length() && isLetter(text.charAt(at));
        }
        int end = at;
        while (end < text.length() && (isBare(text.charAt(end)) || "\"'.".indexOf(text.charAt(end)) >= 0)) {
            end++;
        }
        return end > at && text.startsWith("=", pastBlanks(end));
    }

    private int pastBlanks(int from) {
        int at = from;
        while (at < text.length() && isBlank(text.charAt(at))) {
            at++;
        }
        return at;
    }

    void next() {
        int point = here();
        if (point == '\n') {
            line++;
            lineStart = index + 1;
            pairs = 0;
        } else if (Character.isSupplementaryCodePoint(point)) {
            index++;
            pairs++;
        }
        index++;
    }

    void next(int points) {
        for (int i = 0; i < points; i++) {
            next();
        }
    }

    /** Passes what goes on so, if it does. */
    boolean passes(String next) {
        boolean sees = sees(next);
        if (sees) {
            next(next.length());
        }
        return sees;
    }

    /** The characters from here on for which a condition holds. */
    String ahead(Condition holds) {
        int end = index;
        while (end < text.length() && holds.of(text.charAt(end))) {
            end++;
        }
        return text.substring(index, end);
    }

    /** What a character must be. */
    interface Condition {
        boolean of(int point);
    }

    void passBlanks() {
        while (isBlank(here())) {
            next();
        }
    }

    void passLineEnd() {
        if (isAtLineEnd() && here() != END) {
            next(here() == '\r' ? 2 : 1);
        }
    }

    void passLine() {
        while (!isAtLineEnd()) {
            next();
        }
        passLineEnd();
    }

    /** Blanks and a comment. */
    void passComment() throws Stumble {
        passBlanks();
        if (here() == '#') {
            while (!isAtLineEnd()) {
                checkCharacter();
                next();
            }
        }
    }

    /** Blanks, comments and ends of lines. */
    void passSpace() throws Stumble {
        passComment();
        while (isAtLineEnd() && here() != END) {
            passLineEnd();
            passComment();
        }
    }

    /** A comment or a text may hold any character but those that control something; a tab it may. */
    void checkCharacter() throws Stumble {
        int point = here();
        if ((point < ' ' && point != '\t') || point == 0x7f || isHalf(point)) {
            throw Stumble.over(spot(), "a character that does not print, " + shown(), "take it out");
        }
    }

    /** @param expected such as {@code ]} */
    Stumble unexpected(String expected, String todo) {
        return unexpected(ahead(Cursor::isBare), expected, todo);
    }

    /** @param word what stands here, if it is a word */
    Stumble unexpected(String word, String expected, String todo) {
        String what = word.isEmpty() ? shown() : "'" + Stumble.cut(word) + "'";
        return Stumble.over(spot(), "unexpected " + what + ", expected " + expected, todo);
    }

    /** The character here. */
    private String shown() {
        if (here() == END) {
            return "end of file";
        }
        if (isAtLineEnd()) {
            return "end of line";
        }
        String shown = Character.toString(here());
        return shown.equals("\"") || shown.equals("'") ? shown : "'" + shown + "'";
    }

    /** What a name without quotes is made of. */
    static boolean isBare(int point) {
        return isLetter(point) || isDigit(point) || point == '_' || point == '-';
    }

    static boolean isDigit(int point) {
        return point >= '0' && point <= '9';
    }

    static boolean isLetter(int point) {
        return (point >= 'a' && point <= 'z') || (point >= 'A' && point <= 'Z');
    }

    static boolean isHalf(int point) {
        return point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
    }

    /** Whether the character after the one here is a digit. */
    boolean isDigitAfter() {
        return index + 1 < text.length() && isDigit(text.charAt(index + 1));
    }

    private static boolean isBlank(int point) {
        return point == ' ' || point == '\t';
    }
}
