package buzzout.session;

/** How a key stands, each with a mark and a word, never a colour alone. */
public enum KeyState {
    UNTESTED("untested", '·', '.'),
    GOOD("good", '✓', '+'),
    SILENT("silent", '○', 'o'),
    MISPLACED("misplaced", '↔', '>'),
    DOUBLED("doubled", '‡', '#'),
    REVERSED("reversed", '◄', '<'),
    TWO_WAY("two-way", '↕', '='),
    HELD("held", '▬', '_'),
    INTERMITTENT("intermittent", '~', '~');

    private final String word;
    private final char mark;
    private final char asciiMark;

    KeyState(String word, char mark, char asciiMark) {
        this.word = word;
        this.mark = mark;
        this.asciiMark = asciiMark;
    }

    public String word() {
        return word;
    }

    public char mark(boolean ascii) {
        return ascii ? asciiMark : mark;
    }

    /** Whether the key needs no more attention. */
    public boolean isWell() {
        return this == GOOD;
    }
}
