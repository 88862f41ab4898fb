package buzzout.e2e;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The built jar, run as a person runs it. */
final class Jar {
    private static final String PATH = Path.of(System.getProperty("buzzout.jar", "target/buzzout.jar"))
            .toAbsolutePath()
            .toString();
    private static final String JAVA =
            Path.of(System.getProperty("java.home"), "bin", "java").toString();

    private Jar() {}

    /** What a command came to. */
    record Result(int status, String out, String err) {}

    /** The words of a command line. */
    static List<String> command(String... arguments) {
        List<String> words = new ArrayList<>(List.of(JAVA, "-XX:TieredStopAtLevel=1", "-jar", PATH));
        words.addAll(List.of(arguments));
        return words;
    }

    /** Runs a command to its end in a folder, without a terminal. */
    static Result run(Path folder, String... arguments) throws IOException, InterruptedException {
        Path out = folder.resolve("out.txt");
        Path err = folder.resolve("err.txt");
        ProcessBuilder builder = new ProcessBuilder(command(arguments))
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("LC_ALL", "C.UTF-8");
        Process process = builder.start();
        process.getOutputStream().close();
        assertTrue(process.waitFor(2, TimeUnit.MINUTES), () -> String.join(" ", arguments) + " did not end");
        return new Result(process.exitValue(), Files.readString(out), Files.readString(err));
    }
}
