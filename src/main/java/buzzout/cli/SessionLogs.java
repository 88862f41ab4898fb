package buzzout.cli;

import buzzout.journal.Journal;
import buzzout.journal.LogHeader;
import buzzout.journal.LogNotWritten;
import buzzout.probe.UserFolders;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** Begins the journals that commands write. */
final class SessionLogs {
    /** Where logs go when nobody says. */
    static final String FOLDER = "sessions";

    private SessionLogs() {}

    /**
     * The folder {@code sessions} where the program was started; where nothing may be written there, as after a start
     * from a menu, among this user's own data.
     */
    static Path folder(Surroundings surroundings) throws Failure {
        Path here = surroundings.resolve(FOLDER);
        if (Files.isDirectory(here) || Files.isWritable(surroundings.resolve("").toAbsolutePath())) {
            return here;
        }
        return UserFolders.data(System.getProperty("os.name", ""), surroundings.environment(), UserFolders.home())
                .resolve(FOLDER);
    }

    /** A log of what happens now, under {@code sessions/} unless the person named a file. */
    static Journal begin(Surroundings surroundings, LoadedPlan loaded, Optional<String> unit, Optional<String> file)
            throws Failure, LogNotWritten {
        OffsetDateTime started = surroundings.now().truncatedTo(ChronoUnit.SECONDS);
        LogHeader header = header(loaded, Optional.of(started), unit);
        return file.isPresent()
                ? Journal.create(surroundings.resolve(file.get()), header, loaded.plan())
                : Journal.createIn(folder(surroundings), header, loaded.plan());
    }

    static LogHeader header(LoadedPlan loaded, Optional<OffsetDateTime> started, Optional<String> unit) {
        return new LogHeader(Optional.of(Version.NUMBER), started, unit, Optional.of(loaded.fileName()), loaded.text());
    }
}
