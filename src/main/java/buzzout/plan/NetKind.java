package buzzout.plan;

/** Whether a net is a row or a column. */
public enum NetKind {
    ROW("row"),
    COLUMN("column");

    private final String word;

    NetKind(String word) {
        this.word = word;
    }

    public NetKind other() {
        return this == ROW ? COLUMN : ROW;
    }

    /** The word on screen and in a plan file. */
    public String word() {
        return word;
    }
}
