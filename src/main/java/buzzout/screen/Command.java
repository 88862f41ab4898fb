package buzzout.screen;

/** What a keystroke means. */
sealed interface Command {
    record Quit() implements Command {}

    record ToggleHelp() implements Command {}

    record ToggleBounce() implements Command {}

    /** Back to the board. */
    record CloseHelp() implements Command {}

    record Flip() implements Command {}

    /** Select the nearest key in this direction, as drawn: right and down are positive. */
    record Move(int right, int down) implements Command {}

    /** Choose the finding this many further on. */
    record Choose(int step) implements Command {}

    /** Scroll the findings by this many panes. */
    record Scroll(int panes) implements Command {}

    /** Turn the tones off, or on again. */
    record Mute() implements Command {}

    record Repaint() implements Command {}

    /** For the session. */
    record Ask(Request request) implements Command {}
}
