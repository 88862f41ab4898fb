package buzzout.cli;

import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;

/**
 * What a command may touch of the world outside.
 *
 * @param folder where relative paths start
 * @param environment the environment's variables
 * @param mayDraw whether a screen may be tried on the terminal
 */
record Surroundings(
        Console console, InputStream in, Path folder, Clock clock, Map<String, String> environment, boolean mayDraw) {
    Path resolve(String path) throws Failure {
        try {
            return folder.resolve(path);
        } catch (InvalidPathException e) {
            throw new Failure(Status.USAGE, "\"" + path + "\" cannot be the name of a file: " + e.getReason() + ".");
        }
    }
}
