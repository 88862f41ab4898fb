package buzzout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** A file comes to be whole or not at all: it is written beside its place and moved there in one step. */
final class WholeFile {
    private WholeFile() {}

    /** @throws java.nio.file.FileAlreadyExistsException where a file is and is not to be replaced */
    static void put(Path path, byte[] content, boolean replace) throws IOException {
        // Not createTempFile, whose files only their owner may read.
        Path part = path.resolveSibling(path.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            Files.write(part, content, StandardOpenOption.CREATE_NEW);
            if (replace) {
                Files.move(part, path, StandardCopyOption.REPLACE_EXISTING);
            } else {
                Files.move(part, path);
            }
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
