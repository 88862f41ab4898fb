package buzzout.screen;

import com.googlecode.lanterna.TerminalSize;

/** A screen as it would look in a terminal of some size, drawn without one. */
final class Picture {
    private Picture() {}

    static Sheet of(View view, int columns, int rows) {
        return Page.painted(view, new TerminalSize(columns, rows));
    }
}
