package buzzout.screen;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;

/** How text is written: bold and reverse carry the meaning, colour only repeats it. */
enum Ink {
    PLAIN(TextColor.ANSI.DEFAULT),
    STRONG(TextColor.ANSI.DEFAULT, SGR.BOLD),
    GOOD(TextColor.ANSI.GREEN),
    WRONG(TextColor.ANSI.RED, SGR.BOLD),
    /** Wants the person's attention next: an untested key. */
    WAITING(TextColor.ANSI.DEFAULT, SGR.REVERSE),
    FRAME(TextColor.ANSI.DEFAULT, SGR.BOLD);

    private final TextColor.ANSI colour;
    private final SGR[] styles;

    Ink(TextColor.ANSI colour, SGR... styles) {
        this.colour = colour;
        this.styles = styles;
    }

    TextColor.ANSI colour(Look look) {
        return look.colour() ? colour : TextColor.ANSI.DEFAULT;
    }

    SGR[] styles() {
        return styles.clone();
    }
}
