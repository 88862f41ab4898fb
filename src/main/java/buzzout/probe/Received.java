package buzzout.probe;

/** What came in one line. */
sealed interface Received {
    /** A whole line; its check agreed. */
    record Good(String body) implements Received {}

    /** A line that is not whole; {@code sample} is its beginning, made printable. */
    record Garbage(Cause cause, String sample) implements Received {}

    /** Why a line is garbage: its check or form, its length, its spaces; {@code code} is what a probe answers. */
    enum Cause {
        CHECK("crc"),
        TOO_LONG("long"),
        FIELDS("fields");

        private final String code;

        Cause(String code) {
            this.code = code;
        }

        String code() {
            return code;
        }
    }
}
