package buzzout.cli;

import buzzout.journal.JournalReader;
import buzzout.journal.LogFile;
import buzzout.journal.LogProblem;

/** Reads logs for commands, and says what could not be used of them. */
final class LogReading {
    private LogReading() {}

    static LogFile read(Surroundings surroundings, String name) throws Failure {
        LogFile file = JournalReader.read(surroundings.resolve(name));
        for (LogProblem problem : file.problems()) {
            surroundings.console().complain(problem.toString());
        }
        return file;
    }
}
