package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import buzzout.probe.SketchBench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** What tests need of the machine. Without it they are skipped, but in CI they fail. */
public final class Needs {
    private Needs() {}

    public static void theSketchBench() throws IOException, InterruptedException {
        SketchBench.build().ifPresent(Needs::lacks);
    }

    /** Newer ones look for a logger with streams at each exit. */
    static void java17() {
        if (Runtime.version().feature() != 17) {
            lacks("this is Java " + Runtime.version().feature() + ", and only 17 loads no stream of its own");
        }
    }

    static void tmux() throws InterruptedException {
        program("tmux", "-V").ifPresent(Needs::lacks);
    }

    public static void ngspice() throws InterruptedException {
        program("ngspice", "--version").ifPresent(Needs::lacks);
    }

    /** A display in memory, and a Java that can draw on one. */
    public static void xvfb() throws InterruptedException {
        program("sh", "-c", "command -v Xvfb").ifPresent(Needs::lacks);
        file(Path.of(System.getProperty("java.home"), "lib", "libawt_xawt.so"), "openjdk-17-jre");
    }

    public static void gcc() throws InterruptedException {
        program("gcc", "--version").ifPresent(Needs::lacks);
    }

    public static void chromium() throws InterruptedException {
        program("chromium", "--version").ifPresent(Needs::lacks);
    }

    /** A file of the system that a package of Debian brings. */
    public static void file(Path file, String debianPackage) {
        if (!Files.isReadable(file)) {
            lacks(file + " is missing; it comes with Debian's " + debianPackage);
        }
    }

    static void python() throws InterruptedException {
        program("python3", "-c", "import pty").ifPresent(Needs::lacks);
    }

    private static Optional<String> program(String... command) throws InterruptedException {
        try {
            int status = new ProcessBuilder(command).start().waitFor();
            return status == 0 ? Optional.empty() : Optional.of(String.join(" ", command) + " ended with " + status);
        } catch (IOException absent) {
            return Optional.of(command[0] + " is not installed");
        }
    }

    private static void lacks(String reason) {
        if (!System.getenv().getOrDefault("CI", "").isEmpty()) {
            fail(reason);
        }
        abort(reason);
    }
}
