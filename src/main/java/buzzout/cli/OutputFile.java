package buzzout.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Writes a file whole or not at all, and over an existing one only where the person said so. */
final class OutputFile {
    private OutputFile() {}

    /**
     * Writes text as UTF-8.
     *
     * @param name as the person wrote it
     * @param force whether an existing file may be replaced
     */
    static void write(Surroundings surroundings, String name, String text, boolean force) throws Failure {
        Path path = surroundings.resolve(name);
        if (Files.isDirectory(path)) {
            throw new Failure(Status.USAGE, name + ": this is a folder; name a file.");
        }
        if (!force && Files.exists(path)) {
            throw exists(name);
        }
        try {
            WholeFile.put(path, text.getBytes(StandardCharsets.UTF_8), force);
        } catch (FileAlreadyExistsException e) {
            throw exists(name);
        } catch (NoSuchFileException e) {
            throw new Failure(Status.USAGE, name + ": there is no such folder to write into.");
        } catch (AccessDeniedException e) {
            throw new Failure(Status.USAGE, name + ": you are not allowed to write there.");
        } catch (IOException e) {
            throw new Failure(Status.USAGE, name + ": cannot write this file: " + e.getMessage());
        }
    }

    private static Failure exists(String name) {
        return new Failure(
                Status.USAGE, name + ": there is a file of that name; --force replaces it, or choose another name.");
    }
}
