package buzzout.probe;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.nio.file.attribute.UserPrincipal;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** A folder that this user owns and nobody else may enter. Where there are no such rights, it lies in the user's own profile. */
final class PrivateFolder {
    private static final Set<PosixFilePermission> ONLY_OWNER = PosixFilePermissions.fromString("rwx------");

    private PrivateFolder() {}

    /** A place that may turn out not to be usable. */
    interface Candidate {
        /** The folder, made where needed. */
        Path made() throws IOException;
    }

    /** The user's cache, or else a folder with a random name that goes with the program. */
    static List<Candidate> candidates() {
        return List.of(
                () -> made(UserFolders.cache()),
                () -> made(UserFolders.data(System.getProperty("os.name", ""), System.getenv(), UserFolders.home())),
                PrivateFolder::passing);
    }

    /**
     * Makes a folder private.
     *
     * @throws IOException where it cannot be, because it is somebody else's, or a link
     */
    static Path made(Path folder) throws IOException {
        Files.createDirectories(folder);
        PosixFileAttributeView view =
                Files.getFileAttributeView(folder, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (view == null) {
            return folder;
        }
        PosixFileAttributes attributes = view.readAttributes();
        if (!attributes.isDirectory() || !attributes.owner().equals(self(folder))) {
            throw new IOException(folder + " is a link, or somebody else's");
        }
        if (!attributes.permissions().equals(ONLY_OWNER)) {
            view.setPermissions(ONLY_OWNER);
        }
        return folder;
    }

    /** Whose files this program's are. */
    private static UserPrincipal self(Path folder) throws IOException {
        Path file = Files.createTempFile(folder, "own", null);
        try {
            return Files.getOwner(file);
        } finally {
            Files.delete(file);
        }
    }

    /** Java gives a temporary folder to its owner alone. */
    private static Path passing() throws IOException {
        Path folder = Files.createTempDirectory("buzzout-");
        Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder), "tidying"));
        return folder;
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException left) {
            // It lies in the temporary folder, which is emptied from time to time.
        }
    }
}
