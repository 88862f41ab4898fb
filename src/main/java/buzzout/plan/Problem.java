package buzzout.plan;

/**
 * Something that a plan file says and should not, or does not say and should.
 *
 * @param line from 1
 * @param column from 1, in code points
 * @param message what is there and what to do about it; printable, on one line
 */
public record Problem(String fileName, int line, int column, Severity severity, String message) {
    /** Whether a plan can be made all the same. */
    public enum Severity {
        ERROR,
        NOTE
    }

    /** Such as {@code quayside.toml:14:9: key "Esc" is on two columns, C1 and C4; each key has one}. */
    @Override
    public String toString() {
        return fileName + ":" + line + ":" + column + ": " + (severity == Severity.NOTE ? "note: " : "") + message;
    }
}
