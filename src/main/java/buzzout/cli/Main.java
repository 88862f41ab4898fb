package buzzout.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;

/** Where the program starts. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        // Nothing here follows a country's habits, and its tables of numerals take their time to load.
        Locale.setDefault(Locale.US);
        Console console = new Console(writer(FileDescriptor.out), writer(FileDescriptor.err));
        Surroundings surroundings =
                new Surroundings(console, System.in, Path.of(""), Surroundings.CLOCK, System.getenv(), true);
        System.exit(Program.run(surroundings, arguments));
    }

    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new FileOutputStream(stream), StandardCharsets.UTF_8));
    }
}
