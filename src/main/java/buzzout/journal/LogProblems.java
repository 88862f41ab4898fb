package buzzout.journal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers the problems of one log, the same one once, so that a spoiled file does not bury what matters. */
final class LogProblems {
    private static final int MOST = 50;

    private final String file;
    private final Map<String, Lines> byText = new LinkedHashMap<>();
    private int unlisted;

    LogProblems(String file) {
        this.file = file;
    }

    void add(int line, String says) {
        Lines known = byText.get(says);
        if (known == null && byText.size() == MOST) {
            unlisted++;
        } else {
            byText.put(says, known == null ? new Lines(line, 0) : new Lines(known.first, known.more + 1));
        }
    }

    List<LogProblem> list() {
        List<LogProblem> problems = new ArrayList<>();
        byText.forEach((says, lines) -> problems.add(new LogProblem(file, lines.first, says + lines.addition())));
        if (unlisted > 0) {
            problems.add(new LogProblem(file, 0, unlisted + " more lines could not be used"));
        }
        return problems;
    }

    private record Lines(int first, int more) {
        String addition() {
            return switch (more) {
                case 0 -> "";
                case 1 -> " (and on one more line)";
                default -> " (and on " + more + " more lines)";
            };
        }
    }
}
