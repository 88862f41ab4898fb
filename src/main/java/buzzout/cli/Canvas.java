package buzzout.cli;

/** Where a session is shown. */
enum Canvas {
    TERMINAL,
    WINDOW,
    /** Nowhere: lines of plain text say what happens. */
    NONE
}
