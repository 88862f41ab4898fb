package buzzout.screen;

import com.googlecode.lanterna.TextColor;

/** The terminal's own colour, or another where colours may be used. */
enum Hue {
    OWN("39"),
    GREEN("32"),
    RED("31");

    private final String code;

    Hue(String code) {
        this.code = code;
    }

    /** What makes a terminal write in it (ECMA-48, SGR). */
    String code() {
        return code;
    }

    TextColor.ANSI shade() {
        return switch (this) {
            case OWN -> TextColor.ANSI.DEFAULT;
            case GREEN -> TextColor.ANSI.GREEN;
            case RED -> TextColor.ANSI.RED;
        };
    }
}
