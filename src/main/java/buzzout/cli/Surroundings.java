package buzzout.cli;

import buzzout.screen.BoardScreen;
import java.io.InputStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.function.Supplier;

/**
 * What a command may touch of the world outside.
 *
 * @param folder where relative paths start
 * @param clock the time here; asked only where it is needed, for time zones take a while to load
 * @param environment the environment's variables
 * @param mayDraw whether a screen may be tried on the terminal
 */
record Surroundings(
        Console console,
        InputStream in,
        Path folder,
        Supplier<OffsetDateTime> clock,
        Map<String, String> environment,
        boolean mayDraw) {
    static final Supplier<OffsetDateTime> CLOCK = Surroundings::timeHere;

    /** By the offset that holds now; the rules of all zones would have to be loaded for {@code OffsetDateTime.now()}. */
    private static OffsetDateTime timeHere() {
        Instant now = Instant.now();
        int offsetMillis = TimeZone.getDefault().getOffset(now.toEpochMilli());
        return now.atOffset(ZoneOffset.ofTotalSeconds(offsetMillis / 1000));
    }

    OffsetDateTime now() {
        return clock.get();
    }

    /** Why no screen can be shown, as a sentence; nothing when one can. */
    Optional<String> obstacle() {
        return mayDraw ? BoardScreen.obstacle(environment) : Optional.of("There is no terminal.");
    }

    Path resolve(String path) throws Failure {
        try {
            return folder.resolve(path);
        } catch (InvalidPathException e) {
            throw new Failure(Status.USAGE, "\"" + path + "\" cannot be the name of a file: " + e.getReason() + ".");
        }
    }
}
