package buzzout.journal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** The log could not be written; the message is a sentence for the person that says why and what to do. */
public final class LogNotWritten extends IOException {
    LogNotWritten(Path path, IOException cause) {
        super("cannot write the session log " + path + ": " + why(cause), cause);
    }

    private LogNotWritten(Path path, String why) {
        super("cannot write the session log " + path + ": " + why);
    }

    static LogNotWritten elsewhere(Path path) {
        return new LogNotWritten(path, "another program is writing it. End that one first, or begin a new log.");
    }

    private static String why(IOException cause) {
        String reason = Optional.ofNullable(
                        cause instanceof FileSystemException file ? file.getReason() : cause.getMessage())
                .orElse(cause.getClass().getSimpleName());
        if (cause instanceof FileAlreadyExistsException) {
            return "there is a file of that name, and nothing is overwritten. Choose another name with --log FILE.";
        }
        if (cause instanceof AccessDeniedException || reason.contains("Read-only file system")) {
            return "you are not allowed to write there. Choose another place with --log FILE.";
        }
        if (cause instanceof NoSuchFileException || cause instanceof NotDirectoryException) {
            return "there is no such folder. Make it first, or choose another place with --log FILE.";
        }
        if (reason.toLowerCase(Locale.ROOT).contains("no space left") || reason.contains("quota")) {
            return "the disk is full. What was written before is kept; free some space and start again.";
        }
        if (reason.contains("File too large")) {
            return "files here may not grow any further. What was written before is kept; raise the limit and go on.";
        }
        return reason + ". Choose another place with --log FILE.";
    }

    /** The sentence. */
    public String sentence() {
        return String.valueOf(getMessage());
    }
}
