package buzzout.cli;

import buzzout.journal.JournalReader;
import buzzout.journal.LogFile;
import buzzout.journal.LogProblem;
import java.util.List;

/** Reads logs for commands, and says what could not be used of them. */
final class LogReading {
    private LogReading() {}

    static LogFile read(Surroundings surroundings, String name) throws Failure {
        LogFile file = JournalReader.read(surroundings.resolve(name));
        sayProblems(surroundings, file.problems());
        return file;
    }

    static void sayProblems(Surroundings surroundings, List<LogProblem> problems) {
        problems.forEach(problem -> surroundings.console().complain(problem.toString()));
    }
}
