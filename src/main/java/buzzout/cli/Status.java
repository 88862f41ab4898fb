package buzzout.cli;

/** What the program's exit status means. */
final class Status {
    /** It did its work and found nothing wrong. */
    static final int FINE = 0;

    /** The board has findings. */
    static final int FINDINGS = 1;

    /** The command line or a file is not as it should be. */
    static final int USAGE = 2;

    /** No probe answered. */
    static final int NO_PROBE = 3;

    /** The session log could not be written. */
    static final int NO_LOG = 4;

    /** The program itself failed. */
    static final int INTERNAL = 70;

    /** A signal ended it; the signal's number is added, as shells do. */
    static final int SIGNAL = 128;

    private Status() {}
}
