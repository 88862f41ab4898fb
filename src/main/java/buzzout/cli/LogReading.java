package buzzout.cli;

import buzzout.journal.JournalReader;
import buzzout.journal.KnownPlans;
import buzzout.journal.LogFile;
import buzzout.journal.LogProblem;
import java.util.List;

/** Reads logs for commands, and says what could not be used of them. */
final class LogReading {
    private LogReading() {}

    static LogFile read(Surroundings surroundings, String name) throws Failure {
        return read(surroundings, name, new KnownPlans());
    }

    /** The same of one of many logs, of which few have a plan of their own. */
    static LogFile read(Surroundings surroundings, String name, KnownPlans plans) throws Failure {
        LogFile file = JournalReader.read(surroundings.resolve(name), plans);
        sayProblems(surroundings, file.problems());
        return file;
    }

    static void sayProblems(Surroundings surroundings, List<LogProblem> problems) {
        problems.forEach(problem -> surroundings.console().complain(problem.toString()));
    }
}
