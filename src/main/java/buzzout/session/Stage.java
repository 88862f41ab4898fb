package buzzout.session;

/** How far a session has come. */
public enum Stage {
    /** No probe has answered yet. */
    NO_PROBE,
    /** The probe sweeps; hands off until the quiet check is done. */
    QUIET_CHECK,
    PRESSING,
    /** Something is being repaired; the board is to be unplugged and plugged in again. */
    REPAIRING,
    ENDED
}
