package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The launchers that lie beside the jar. */
class LauncherIT {
    private static final Path LAUNCHER = Path.of(System.getProperty("buzzout.jar", "target/buzzout.jar"))
            .toAbsolutePath()
            .resolveSibling("buzzout");

    /** A file, so no folder can be made there: these starts have no archive, nor is one made behind the test's back. */
    private static final String NO_CACHE = LAUNCHER.toString();

    @TempDir
    Path folder;

    @Test
    void it_starts_the_jar_beside_it_through_links_and_with_spaces() throws IOException, InterruptedException {
        Path bin = Files.createDirectories(folder.resolve("my bin"));
        Files.createSymbolicLink(folder.resolve("once"), LAUNCHER);
        Files.createSymbolicLink(bin.resolve("buzzout"), Path.of("../once"));
        Files.createSymbolicLink(folder.resolve("a java"), Path.of(System.getProperty("java.home")));
        String said = said(
                0,
                Map.of("JAVA_HOME", folder.resolve("a java").toString()),
                bin.resolve("buzzout").toString(),
                "--version");
        assertTrue(said.matches("Buzzout \\d+\\.\\d+\\.\\d+\n"), said);
    }

    @Test
    void it_hands_arguments_and_status_through() throws IOException, InterruptedException {
        String home = System.getProperty("java.home");
        assertEquals(
                "a b*.toml: there is no such file; `buzzout new 4x12` writes a plan to start from.\n",
                said(2, Map.of("JAVA_HOME", home), LAUNCHER.toString(), "check", "a b*.toml"));
    }

    @Test
    void without_a_java_or_its_jar_it_says_what_to_do() throws IOException, InterruptedException {
        Path lonely = Files.copy(LAUNCHER, folder.resolve("buzzout"));
        assertTrue(lonely.toFile().setExecutable(true));
        assertEquals(
                folder.toRealPath() + "/buzzout.jar is missing: keep it beside the launcher.\n",
                said(70, Map.of(), lonely.toString()));
        Path tools = Files.createDirectories(folder.resolve("tools"));
        for (String tool : new String[] {"sh", "readlink"}) {
            Files.createSymbolicLink(tools.resolve(tool), Path.of("/usr/bin", tool));
        }
        assertEquals(
                "Buzzout needs Java 17 or newer: install it, or set JAVA_HOME.\n",
                said(70, Map.of("PATH", tools.toString(), "JAVA_HOME", ""), LAUNCHER.toString()));
    }

    @Test
    @Timeout(240)
    void the_second_start_takes_its_classes_from_an_archive_and_a_spoilt_one_does_no_harm()
            throws IOException, InterruptedException {
        Path cache = Files.createDirectories(folder.resolve("my cache"));
        Map<String, String> environment = Map.of(
                "JAVA_HOME",
                System.getProperty("java.home"),
                "XDG_CACHE_HOME",
                cache.toString(),
                "HOME",
                folder.toString());
        String first = said(0, environment, LAUNCHER.toString(), "--version");
        Path archive = archive();
        assertTrue(Files.size(archive) > 1_000_000, archive + ": " + Files.size(archive));
        assertEquals(first, said(0, environment, LAUNCHER.toString(), "--version"));

        String jar = LAUNCHER.resolveSibling("buzzout.jar").toString();
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String loaded = said(
                0,
                Map.of(),
                java,
                "-XX:+UseG1GC",
                "-XX:SharedArchiveFile=" + archive,
                "-Xlog:class+load",
                "-jar",
                jar,
                "--help");
        assertTrue(loaded.matches("(?s).*buzzout\\.cli\\.Program source: shared objects file.*"), loaded);

        assertTrue(archive.toFile().setWritable(true));
        Files.writeString(archive, "spoilt");
        assertEquals(first, said(0, environment, LAUNCHER.toString(), "--version"));
        while (Files.size(archive()) < 1_000_000) {
            Thread.sleep(100);
        }
    }

    /** The one that is being made in the background, once it is there. */
    private Path archive() throws IOException, InterruptedException {
        String jar = LAUNCHER.toRealPath().resolveSibling("buzzout.jar").toString();
        Path ofJar = folder.resolve("my cache").resolve("buzzout/classes" + jar).resolve("plan");
        while (!Files.exists(ofJar.resolve("archive")) || Files.exists(ofJar.resolve("making"))) {
            Thread.sleep(100);
        }
        return ofJar.resolve("archive");
    }

    @Test
    void the_one_for_windows_is_filled_in_and_has_its_line_ends() throws IOException {
        String text = Files.readString(LAUNCHER.resolveSibling("buzzout.cmd"));
        assertTrue(text.contains("set \"JAR=%~dp0buzzout.jar\"\r\n"), text);
        assertFalse(text.contains("@project"), text);
        assertEquals(text.lines().count(), text.split("\r\n", -1).length - 1);
    }

    private String said(int status, Map<String, String> environment, String... command)
            throws IOException, InterruptedException {
        ProcessBuilder builder =
                new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
        builder.environment().put("XDG_CACHE_HOME", NO_CACHE);
        builder.environment().putAll(environment);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(status, process.waitFor(), said);
        return said;
    }
}
