package buzzout.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The program as a person starts it: by its launcher, beside the jar that {@code mvn package} made. */
final class Launched {
    private static final Path LAUNCHER = Path.of("target/buzzout").toAbsolutePath();

    private Launched() {}

    static List<String> command(String... arguments) {
        if (!Files.exists(LAUNCHER)) {
            throw new IllegalStateException("target/buzzout is missing: package comes first");
        }
        List<String> words = new ArrayList<>(List.of(LAUNCHER.toString()));
        words.addAll(List.of(arguments));
        return words;
    }
}
