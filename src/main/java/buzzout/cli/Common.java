package buzzout.cli;

import buzzout.screen.Look;
import java.util.Map;
import picocli.CommandLine.Option;

/** Options that every command takes. */
final class Common {
    @Option(names = "--no-color", description = "No colours; NO_COLOR in the environment does the same.")
    boolean noColour;

    @Option(names = "--ascii", description = "Nothing but ASCII in what Buzzout itself writes.")
    boolean ascii;

    @Option(names = "--quiet", description = "Only results and errors, no remarks and no tones.")
    boolean quiet;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    boolean help;

    Look lookInWindow(Map<String, String> environment) {
        return Look.inWindow(environment, noColour, ascii);
    }

    Look look(Map<String, String> environment) {
        return Look.from(environment, noColour, ascii);
    }
}
