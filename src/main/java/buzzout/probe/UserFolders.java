package buzzout.probe;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where this user's programs keep their own, on each system. The folders need not exist yet. */
public final class UserFolders {
    private static final String OURS = "buzzout";

    private UserFolders() {}

    /** For what can be made again, by an operating system's name, an environment and a home. */
    static Path cache(String system, Map<String, String> environment, Path home) {
        return switch (family(system)) {
            case WINDOWS -> local(environment, home);
            case MAC -> home.resolve("Library").resolve("Caches").resolve(OURS);
            case OTHER ->
                set(environment, "XDG_CACHE_HOME")
                        .orElse(home.resolve(".cache"))
                        .resolve(OURS);
        };
    }

    /** For what must be kept, by the same. */
    public static Path data(String system, Map<String, String> environment, Path home) {
        return switch (family(system)) {
            case WINDOWS -> local(environment, home);
            case MAC -> home.resolve("Library").resolve("Application Support").resolve(OURS);
            case OTHER ->
                set(environment, "XDG_DATA_HOME")
                        .orElse(home.resolve(".local").resolve("share"))
                        .resolve(OURS);
        };
    }

    static Path cache() {
        return cache(System.getProperty("os.name", ""), System.getenv(), home());
    }

    /** This user's home. */
    public static Path home() {
        return Path.of(System.getProperty("user.home", "."));
    }

    private enum Family {
        WINDOWS,
        MAC,
        OTHER
    }

    private static Family family(String system) {
        String name = system.toLowerCase(Locale.ROOT);
        return name.startsWith("windows") ? Family.WINDOWS : name.startsWith("mac") ? Family.MAC : Family.OTHER;
    }

    private static Path local(Map<String, String> environment, Path home) {
        return set(environment, "LOCALAPPDATA")
                .orElse(home.resolve("AppData").resolve("Local"))
                .resolve(OURS);
    }

    /** Relative paths do not count, as the XDG base directory specification asks. */
    private static Optional<Path> set(Map<String, String> environment, String variable) {
        return Optional.ofNullable(environment.get(variable))
                .filter(value -> !value.isBlank())
                .map(Path::of)
                .filter(Path::isAbsolute);
    }
}
