package buzzout.plan;

import buzzout.toml.Spot;

/** How large a file may be before it is read. The largest board that can be probed needs some 2000 lines. */
final class Bounds {
    private static final int MOST_LINES = 5000;

    private Bounds() {}

    /** Whether the text is within all bounds; tells of the first that it is not. */
    static boolean hold(String text, Problems problems) {
        if (text.length() > PlanReader.MOST_CHARACTERS) {
            problems.error(Spot.START, "the file is longer than a plan can be, 1 MiB; give the path of a plan");
            return false;
        }
        int lines = 1;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', end + 1)) {
            lines++;
        }
        if (lines > MOST_LINES) {
            problems.error(
                    new Spot(MOST_LINES + 1, 1),
                    "the file has more lines than a plan can have, " + MOST_LINES + "; give the path of a plan");
            return false;
        }
        return true;
    }
}
