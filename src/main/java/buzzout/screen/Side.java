package buzzout.screen;

/** The side of the board that is drawn. */
public enum Side {
    CAP("cap side"),
    SOLDER("solder side, mirrored");

    private final String words;

    Side(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    Side other() {
        return this == CAP ? SOLDER : CAP;
    }
}
