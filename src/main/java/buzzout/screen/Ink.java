package buzzout.screen;

/** How text is written: bold and reverse carry the meaning, colour only repeats it. */
enum Ink {
    PLAIN(Hue.OWN, false, false),
    STRONG(Hue.OWN, true, false),
    GOOD(Hue.GREEN, false, false),
    WRONG(Hue.RED, true, false),
    /** Wants the person's attention next: an untested key. */
    WAITING(Hue.OWN, false, true),
    FRAME(Hue.OWN, true, false);

    private final Hue hue;
    private final boolean bold;
    private final boolean reverse;

    Ink(Hue hue, boolean bold, boolean reverse) {
        this.hue = hue;
        this.bold = bold;
        this.reverse = reverse;
    }

    Hue hue() {
        return hue;
    }

    boolean bold() {
        return bold;
    }

    boolean reverse() {
        return reverse;
    }
}
