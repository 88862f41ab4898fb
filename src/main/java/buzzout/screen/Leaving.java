package buzzout.screen;

/** How a screen was left. */
public sealed interface Leaving {
    /** The person quit. */
    record Quit() implements Leaving {}

    /** The terminal went away, as when its window is closed or a connection breaks. */
    record TerminalGone() implements Leaving {}

    /**
     * A signal ended it.
     *
     * @param number the signal's number; a shell expects 128 more as the exit status
     */
    record Signalled(int number) implements Leaving {}
}
