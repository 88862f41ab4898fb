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

/**
 * Readies jSerialComm before its first use: its native library goes into the user's own cache, because it would else be
 * unpacked to a place in the shared temporary folder that anyone can foresee; and its threads do not keep the program
 * alive.
 */
final class NativeLibrary {
    private static final String PATH_PROPERTY = "jSerialComm.library.path";

    /** As the library names its own folders. */
    private static final List<String> ARCHITECTURES = List.of(
            "x86_64", "x86", "aarch64", "armv8_64", "armv8_32", "armv7hf", "armv7", "armv6hf", "armv5", "ppc64le");

    private NativeLibrary() {}

    /** To be called before the library's port class is touched. Where the cache cannot be written, it unpacks as ever. */
    static void ready() {
        SerialPortThreadFactory.set(task -> {
            Thread thread = new Thread(task, "serial");
            thread.setDaemon(true);
            return thread;
        });
        if (System.getProperty(PATH_PROPERTY) == null) {
            try {
                Path folder = UserFolders.cache().resolve("jSerialComm");
                unpack(System.getProperty("os.name", ""), folder);
                System.setProperty(PATH_PROPERTY, folder.toString());
            } catch (IOException unwritable) {
                // The library's own way is the better one then.
            }
        }
    }

    /** Lays the libraries for one operating system out below a folder, as the library looks for them. */
    static void unpack(String system, Path folder) throws IOException {
        String name = system.toLowerCase(Locale.ROOT);
        boolean windows = name.startsWith("windows");
        boolean mac = name.startsWith("mac");
        String family = windows ? "Windows" : mac ? "OSX" : "Linux";
        String file = windows ? "jSerialComm.dll" : mac ? "libjSerialComm.jnilib" : "libjSerialComm.so";
        for (String architecture : ARCHITECTURES) {
            String resource = "/" + family + "/" + architecture + "/" + file;
            try (InputStream packed = SerialPortThreadFactory.class.getResourceAsStream(resource)) {
                if (packed != null) {
                    place(
                            packed.readAllBytes(),
                            folder.resolve(family).resolve(architecture).resolve(file));
                }
            }
        }
    }

    /** In one move, so that a second program that starts meanwhile finds a whole file. */
    private static void place(byte[] library, Path file) throws IOException {
        if (Files.exists(file) && Arrays.equals(Files.readAllBytes(file), library)) {
            return;
        }
        Path folder = Files.createDirectories(file.getParent());
        Path part = Files.createTempFile(folder, "part", null);
        Files.write(part, library);
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }
}
