package buzzout.journal;

/**
 * Something in a log that could not be used.
 *
 * @param line from 1; 0 where it concerns the file as a whole
 * @param says what is wrong and what was done about it
 */
public record LogProblem(String file, int line, String says) {
    /** Such as {@code sessions/q.jsonl:17: the line is not JSON; it was left out}. */
    @Override
    public String toString() {
        return file + (line > 0 ? ":" + line : "") + ": " + says;
    }
}
