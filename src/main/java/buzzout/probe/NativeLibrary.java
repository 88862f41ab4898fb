package buzzout.probe;

import com.fazecast.jSerialComm.SerialPortThreadFactory;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/**
 * Readies jSerialComm before its first use: its native library goes where only this user can write, because it would
 * else be unpacked to a place in the shared temporary folder that anyone can foresee; and its threads do not keep the
 * program alive.
 */
final class NativeLibrary {
    private static final String PATH_PROPERTY = "jSerialComm.library.path";

    /** Part of the places that the library makes up itself. */
    private static final String PLACE_PROPERTY = "fazecast.jSerialComm.appid";

    /** As the library names its own folders. */
    private static final List<String> ARCHITECTURES = List.of(
            "x86_64", "x86", "aarch64", "armv8_64", "armv8_32", "armv7hf", "armv7", "armv6hf", "armv5", "ppc64le");

    private NativeLibrary() {}

    /** To be called before the library's port class is touched. */
    static void ready() {
        SerialPortThreadFactory.set(task -> {
            Thread thread = new Thread(task, "serial");
            thread.setDaemon(true);
            return thread;
        });
        if (System.getProperty(PATH_PROPERTY) == null) {
            String system = System.getProperty("os.name", "");
            placed(system, PrivateFolder.candidates())
                    .ifPresentOrElse(
                            folder -> System.setProperty(PATH_PROPERTY, folder.toString()),
                            // Left to itself it must not take what somebody laid out for it.
                            () -> System.setProperty(
                                    PLACE_PROPERTY, UUID.randomUUID().toString()));
        }
    }

    /** Lays the libraries out in the first of these places that is private and lets programs run. */
    static Optional<Path> placed(String system, List<PrivateFolder.Candidate> candidates) {
        for (PrivateFolder.Candidate candidate : candidates) {
            try {
                Path folder = candidate.made().resolve("jSerialComm");
                if (unpack(system, folder)) {
                    return Optional.of(folder);
                }
            } catch (IOException unusable) {
                // The next place may be usable.
            }
        }
        return Optional.empty();
    }

    /**
     * Lays the libraries for one operating system out below a folder, as the library looks for them. Says whether the
     * file system lets them be loaded: one that is mounted noexec does not.
     */
    static boolean unpack(String system, Path folder) throws IOException {
        String name = system.toLowerCase(Locale.ROOT);
        boolean windows = name.startsWith("windows");
        boolean mac = name.startsWith("mac");
        String family = windows ? "Windows" : mac ? "OSX" : "Linux";
        String file = windows ? "jSerialComm.dll" : mac ? "libjSerialComm.jnilib" : "libjSerialComm.so";
        boolean loadable = true;
        for (String architecture : ARCHITECTURES) {
            String resource = "/" + family + "/" + architecture + "/" + file;
            try (InputStream packed = SerialPortThreadFactory.class.getResourceAsStream(resource)) {
                if (packed != null) {
                    Path parent = Files.createDirectories(folder.resolve(family).resolve(architecture));
                    loadable &= place(packed.readAllBytes(), parent.resolve(file));
                }
            }
        }
        return loadable;
    }

    /**
     * In one move, so that a second program that starts meanwhile finds a whole file. What lies there already is
     * compared byte for byte with what this program brings.
     */
    private static boolean place(byte[] library, Path file) throws IOException {
        if (!Files.isRegularFile(file) || !Arrays.equals(Files.readAllBytes(file), library)) {
            Path part = Files.createTempFile(file.getParent(), "part", null);
            Files.write(part, library);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        }
        return Files.isExecutable(file) || (file.toFile().setExecutable(true) && Files.isExecutable(file));
    }
}
