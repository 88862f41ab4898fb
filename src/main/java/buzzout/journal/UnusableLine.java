package buzzout.journal;

/** A line of a log that cannot be used; its message says why, ready to follow a file name and line number. */
final class UnusableLine extends Exception {
    UnusableLine(String why) {
        super(why);
    }

    String why() {
        return String.valueOf(getMessage());
    }
}
