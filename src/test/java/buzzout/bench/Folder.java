package buzzout.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder of temporary files, which goes when it is closed. */
record Folder(Path path) implements AutoCloseable {
    static Folder make() throws IOException {
        return new Folder(Files.createTempDirectory("buzzout-bench-"));
    }

    Path resolve(String name) {
        return path.resolve(name);
    }

    @Override
    public void close() throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(path)) {
            files = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path file : files) {
            Files.deleteIfExists(file);
        }
    }
}
