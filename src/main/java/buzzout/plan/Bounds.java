package buzzout.plan;

/**
 * How large a file may be before it is parsed. The largest board that can be probed needs some 2000 lines.
 *
 * <p>The parser's time grows with the cube of a run of empty and comment lines (measured with tomlj 2.2.0: 1000 take
 * seconds), so that such a run has a bound of its own; it leaves room for a licence.
 */
final class Bounds {
    private static final int MOST_LINES = 5000;
    private static final int LONGEST_RUN = 300;

    private Bounds() {}

    /** Whether the text is within all bounds; tells of the first that it is not. */
    static boolean hold(String text, Problems problems) {
        if (text.length() > PlanReader.MOST_CHARACTERS) {
            problems.error(Spot.START, "the file is longer than a plan can be, 1 MiB; give the path of a plan");
            return false;
        }
        String[] lines = text.split("\n", -1);
        if (lines.length > MOST_LINES) {
            problems.error(
                    new Spot(MOST_LINES + 1, 1),
                    "the file has more lines than a plan can have, " + MOST_LINES + "; give the path of a plan");
            return false;
        }
        int run = 0;
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i].strip();
            run = line.isEmpty() || line.startsWith("#") ? run + 1 : 0;
            if (run > LONGEST_RUN) {
                problems.error(
                        new Spot(i + 1, 1),
                        "more than " + LONGEST_RUN + " empty or comment lines in a row; take some out");
                return false;
            }
        }
        return true;
    }
}
