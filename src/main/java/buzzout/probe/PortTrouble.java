package buzzout.probe;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/** What to tell the person about a port that does not open, or does not stay open. */
final class PortTrouble {
    /** Error numbers of the operating systems; jSerialComm hands them on as they are. */
    private static final int NO_SUCH_FILE = 2;

    private static final int WINDOWS_IN_USE = 5;
    private static final int IN_USE = 11;
    private static final int NOT_PERMITTED = 13;
    private static final int BUSY = 16;
    private static final int NOT_A_TERMINAL = 25;

    private PortTrouble() {}

    static String missing(String path) {
        return "There is no port " + Printable.of(path) + ": plug the probe in, or see what `buzzout ports` lists.";
    }

    static String unplugged(String path) {
        return "The probe on " + Printable.of(path) + " was unplugged: plug it in again.";
    }

    static String takesNothing(String path) {
        return "The device on " + Printable.of(path) + " takes no bytes: it is hung, or no probe; plug it in again.";
    }

    static String notOpened(String path, int code) {
        return switch (code) {
            case NO_SUCH_FILE -> file(path).isPresent() ? inUse(path) : missing(path);
            case IN_USE, BUSY, WINDOWS_IN_USE -> inUse(path);
            case NOT_PERMITTED -> notPermitted(path);
            case NOT_A_TERMINAL -> Printable.of(path) + " is no serial port: see what `buzzout ports` lists.";
            default ->
                Printable.of(path) + " does not open (error " + code + "): plug the probe in again, or see what"
                        + " `buzzout ports` lists.";
        };
    }

    static String inUse(String path) {
        return "Another program has " + Printable.of(path) + " open: close serial monitors and any other Buzzout.";
    }

    static String notPermitted(String path) {
        String start = "This user may not open " + Printable.of(path) + ": ";
        return start
                + groupThatMay(path)
                        .map(group -> "run `sudo usermod -aG " + group + " $USER`, log out and in again.")
                        .orElse("run `sudo chmod a+rw " + Printable.of(path) + "`, which lasts until it is unplugged.");
    }

    /** What to do about a device file that this user may not open, where that is so. */
    static Optional<String> permission(String path) {
        return file(path)
                .filter(file -> !(Files.isReadable(file) && Files.isWritable(file)))
                .map(file -> notPermitted(path));
    }

    /** The group that owns the device file, where it may read and write it and is one to join. */
    private static Optional<String> groupThatMay(String path) {
        return file(path)
                .flatMap(PortTrouble::attributes)
                .filter(file -> file.permissions().containsAll(PosixFilePermissions.fromString("---rw----")))
                .map(file -> Printable.of(file.group().getName()))
                .filter(group -> !group.equals("root") && !group.equals("wheel"));
    }

    private static Optional<PosixFileAttributes> attributes(Path file) {
        try {
            return Optional.of(Files.readAttributes(file, PosixFileAttributes.class));
        } catch (IOException | UnsupportedOperationException unknown) {
            return Optional.empty();
        }
    }

    /** The device file, where ports are files and this one is there. */
    private static Optional<Path> file(String path) {
        try {
            return Optional.of(Path.of(path)).filter(Files::exists);
        } catch (InvalidPathException noFile) {
            return Optional.empty();
        }
    }
}
