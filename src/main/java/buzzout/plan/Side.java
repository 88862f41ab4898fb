package buzzout.plan;

/** The side of a board that is looked at; from the solder side, left and right are mirrored. */
public enum Side {
    CAP("cap side"),
    SOLDER("solder side, mirrored");

    private final String words;

    Side(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public Side other() {
        return this == CAP ? SOLDER : CAP;
    }
}
