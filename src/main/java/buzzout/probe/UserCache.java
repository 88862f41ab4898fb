package buzzout.probe;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where this user's programs keep what they can make again. */
final class UserCache {
    private UserCache() {}

    /** The folder for ours, for an operating system's name, an environment and a home; it need not exist yet. */
    static Path folder(String system, Map<String, String> environment, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        Path base;
        if (name.startsWith("windows")) {
            base = set(environment, "LOCALAPPDATA")
                    .orElse(home.resolve("AppData").resolve("Local"));
        } else if (name.startsWith("mac")) {
            base = home.resolve("Library").resolve("Caches");
        } else {
            base = set(environment, "XDG_CACHE_HOME").orElse(home.resolve(".cache"));
        }
        return base.resolve("buzzout");
    }

    static Path folder() {
        return folder(
                System.getProperty("os.name", ""), System.getenv(), Path.of(System.getProperty("user.home", ".")));
    }

    /** Relative paths do not count, as the XDG base directory specification asks. */
    private static Optional<Path> set(Map<String, String> environment, String variable) {
        return Optional.ofNullable(environment.get(variable))
                .filter(value -> !value.isBlank())
                .map(Path::of)
                .filter(Path::isAbsolute);
    }
}
