package buzzout.journal;

import java.util.List;
import java.util.Optional;

/**
 * What a reader could use of a log file, and what it could not.
 *
 * @param log empty where nothing can be used: no plan, a newer format, no such file
 * @param problems in the order of their lines
 */
public record LogFile(Optional<SessionLog> log, List<LogProblem> problems) {
    public LogFile {
        problems = List.copyOf(problems);
    }

    static LogFile unusable(LogProblem problem) {
        return new LogFile(Optional.empty(), List.of(problem));
    }
}
