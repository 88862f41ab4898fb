package buzzout.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
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
