package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NativeLibraryTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "Linux,Linux/x86_64/libjSerialComm.so",
        "Linux,Linux/armv8_64/libjSerialComm.so",
        "Mac OS X,OSX/aarch64/libjSerialComm.jnilib",
        "Windows 11,Windows/x86_64/jSerialComm.dll"
    })
    void lays_out_the_library_of_each_system(String system, String file) throws IOException {
        NativeLibrary.unpack(system, folder);

        assertTrue(Files.size(folder.resolve(file)) > 10_000);
    }

    @Test
    void puts_right_a_file_that_was_cut_short_and_leaves_no_parts() throws IOException {
        NativeLibrary.unpack("Linux", folder);
        Path library = folder.resolve("Linux/x86_64/libjSerialComm.so");
        long whole = Files.size(library);
        Files.write(library, new byte[] {1});
        NativeLibrary.unpack("Linux", folder);

        assertEquals(whole, Files.size(library));
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(
                    List.of(),
                    files.filter(file -> file.getFileName().toString().startsWith("part"))
                            .toList());
        }
    }

    @Test
    void what_was_tampered_with_at_the_same_length_is_put_right() throws IOException {
        NativeLibrary.unpack("Linux", folder);
        Path library = folder.resolve("Linux/x86_64/libjSerialComm.so");
        byte[] whole = Files.readAllBytes(library);
        byte[] altered = whole.clone();
        altered[whole.length / 2] ^= 1;
        Files.write(library, altered);
        NativeLibrary.unpack("Linux", folder);

        assertArrayEquals(whole, Files.readAllBytes(library));
        System.out.println(
                "figure: the serial library altered in the cache | put right before it is loaded | the same");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void nobody_else_may_enter_the_folder_even_if_it_was_open_before() throws IOException {
        Path fresh = PrivateFolder.made(folder.resolve("a/buzzout"));
        Path open = Files.createDirectory(folder.resolve("open"));
        Files.setPosixFilePermissions(open, PosixFilePermissions.fromString("rwxrwxrwx"));
        PrivateFolder.made(open);

        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(fresh)));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(open)));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void a_link_in_the_cache_s_place_is_not_followed_and_the_next_place_is_taken() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), elsewhere);
        Path next = folder.resolve("next");

        assertEquals(
                Optional.of(next.resolve("jSerialComm")),
                NativeLibrary.placed("Linux", List.of(() -> PrivateFolder.made(link), () -> PrivateFolder.made(next))));
        try (Stream<Path> files = Files.list(elsewhere)) {
            assertEquals(0, files.count());
        }
    }

    /** On a file system of its own that is mounted noexec, in a program of its own that lists the ports. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void a_cache_that_lets_no_program_run_is_passed_by_and_ports_are_listed_all_the_same()
            throws IOException, InterruptedException {
        Path cache = Files.createDirectory(folder.resolve("cache"));
        Path temporary = Files.createDirectory(folder.resolve("temporary"));
        String script = "mount -t tmpfs -o noexec,size=4m tmpfs \"$1\" || exit 77; shift; exec \"$@\"";
        Process listing = new ProcessBuilder(
                        "unshare",
                        "--map-root-user",
                        "--mount",
                        "sh",
                        "-c",
                        script,
                        "sh",
                        cache.toString(),
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.home=" + cache,
                        "-Djava.io.tmpdir=" + temporary,
                        "-cp",
                        System.getProperty("java.class.path"),
                        Listing.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(listing.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int status = listing.waitFor();
        assumeTrue(
                status != 77 && !said.startsWith("unshare"),
                "no file system can be mounted here, so none that is noexec: " + said);

        assertEquals(0, status, said);
        assertTrue(said.startsWith("loaded from " + temporary + "/buzzout-"), said);
        System.out.println("figure: a cache mounted noexec | loaded from a private folder that goes with the program,"
                + " ports listed | the same");
        try (Stream<Path> left = Files.list(temporary)) {
            assertEquals(
                    List.of(),
                    left.filter(file -> !file.endsWith("hsperfdata_root")).toList());
        }
    }

    /** Says where the library was loaded from. */
    static final class Listing {
        private Listing() {}

        public static void main(String[] arguments) {
            SerialPorts.list();
            System.out.println("loaded from " + System.getProperty("jSerialComm.library.path"));
        }
    }

    @ParameterizedTest
    @DisabledOnOs(OS.WINDOWS)
    @CsvSource({
        "Linux,XDG_CACHE_HOME,/cache,/cache/buzzout",
        "Linux,XDG_CACHE_HOME,relative,/home/me/.cache/buzzout",
        "Linux,XDG_CACHE_HOME,' ',/home/me/.cache/buzzout",
        "Linux,OTHER,/cache,/home/me/.cache/buzzout",
        "Mac OS X,XDG_CACHE_HOME,/cache,/home/me/Library/Caches/buzzout",
        "Windows 11,LOCALAPPDATA,/local,/local/buzzout",
        "Windows 11,OTHER,/local,/home/me/AppData/Local/buzzout"
    })
    void lives_in_the_user_s_cache(String system, String variable, String value, String expected) {
        assertEquals(Path.of(expected), UserFolders.cache(system, Map.of(variable, value), Path.of("/home/me")));
    }

    @ParameterizedTest
    @DisabledOnOs(OS.WINDOWS)
    @CsvSource({
        "Linux,XDG_DATA_HOME,/data,/data/buzzout",
        "Linux,OTHER,/data,/home/me/.local/share/buzzout",
        "Mac OS X,OTHER,/data,/home/me/Library/Application Support/buzzout",
        "Windows 11,LOCALAPPDATA,/local,/local/buzzout"
    })
    void what_must_be_kept_lives_with_the_user_s_data(String system, String variable, String value, String expected) {
        assertEquals(Path.of(expected), UserFolders.data(system, Map.of(variable, value), Path.of("/home/me")));
    }

    @Test
    void is_found_in_the_cache_when_ports_are_listed() {
        SerialPorts.list();
        Path cache = UserFolders.cache().resolve("jSerialComm");

        assertEquals(cache.toString(), System.getProperty("jSerialComm.library.path"));
        assertTrue(Files.isDirectory(cache));
    }
}
