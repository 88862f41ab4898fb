package buzzout.cli;

import buzzout.screen.Opening;

/** Where a session is shown. */
sealed interface Canvas {
    /** On the terminal that the program was started in, which is being got ready. */
    record OwnTerminal(Opening opening) implements Canvas {}

    /** In a window of its own. */
    record Window() implements Canvas {}

    /** Nowhere: lines of plain text say what happens. */
    record None() implements Canvas {}
}
