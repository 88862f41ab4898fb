package buzzout.cli;

import buzzout.line.Flag;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Writes a file whole or not at all, and overwrites nothing unasked. */
final class NewFile {
    /** What commands take that write one. */
    static final Flag FORCE = Flag.of("--force", "Overwrite the file, if there is one.");

    private NewFile() {}

    /** Fails where a file of the name is, unless forced. To be asked before long work, too. */
    static void mustBeFree(Surroundings surroundings, String name, boolean force) throws Failure {
        Path path = surroundings.resolve(name);
        if (Files.isDirectory(path)) {
            throw new Failure(Status.USAGE, name + ": this is a folder; name a file.");
        }
        if (!force && Files.exists(path)) {
            throw new Failure(
                    Status.USAGE,
                    name + ": there is a file of that name; choose another, or overwrite it with --force.");
        }
    }

    /** Writes a text as UTF-8 beside its place, then moves it there in one step. */
    static void write(Surroundings surroundings, String name, String text, boolean force) throws Failure {
        write(surroundings, name, text.getBytes(StandardCharsets.UTF_8), force);
    }

    /** The same with bytes. */
    static void write(Surroundings surroundings, String name, byte[] content, boolean force) throws Failure {
        mustBeFree(surroundings, name, force);
        Path path = surroundings.resolve(name).toAbsolutePath();
        try {
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                Files.write(path, content); // a device or a pipe
                return;
            }
            Path folder = Optional.ofNullable(path.getParent()).orElse(path);
            if (!Files.isDirectory(folder)) {
                throw new Failure(Status.USAGE, name + ": there is no such folder; make it first.");
            }
            WholeFile.put(path, content, true);
        } catch (AccessDeniedException e) {
            throw new Failure(Status.USAGE, name + ": you are not allowed to write there.");
        } catch (IOException e) {
            String reason = e instanceof FileSystemException file && file.getReason() != null
                    ? file.getReason()
                    : String.valueOf(e.getMessage());
            throw new Failure(Status.USAGE, name + ": cannot write this file: " + reason + ".");
        }
    }
}
