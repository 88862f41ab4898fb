package buzzout.screen;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

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
    private final Map<Character, Glyph> coloured = new ConcurrentHashMap<>();
    private final Map<Character, Glyph> plain = new ConcurrentHashMap<>();

    Ink(TextColor.ANSI colour, SGR... styles) {
        this.colour = colour;
        this.styles = styles;
    }

    Glyph glyph(char each, Look look) {
        return (look.colour() ? coloured : plain).computeIfAbsent(each, any -> made(any, look));
    }

    private Glyph made(char each, Look look) {
        TextColor.ANSI foreground = look.colour() ? colour : TextColor.ANSI.DEFAULT;
        return new Glyph(each, foreground, styles);
    }
}
