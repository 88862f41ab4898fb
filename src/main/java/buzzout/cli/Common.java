package buzzout.cli;

import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Named;
import buzzout.screen.Look;
import java.util.List;
import java.util.Map;

/** What every command takes. */
record Common(boolean noColour, boolean ascii, boolean quiet) {
    /** Nothing of it. */
    static final Common USUAL = new Common(false, false, false);

    private static final Flag NO_COLOUR =
            Flag.of("--no-color", "No colours; NO_COLOR in the environment does the same.");
    private static final Flag ASCII = Flag.of("--ascii", "Nothing but ASCII in what Buzzout itself writes.");
    private static final Flag QUIET = Flag.of("--quiet", "Only results and errors, no remarks and no tones.");

    static final List<Named> OPTIONS = List.of(NO_COLOUR, ASCII, QUIET);

    static Common of(Given given) {
        return new Common(given.has(NO_COLOUR), given.has(ASCII), given.has(QUIET));
    }

    Look lookOn(Canvas canvas, Map<String, String> environment) {
        return canvas instanceof Canvas.Window ? Look.inWindow(environment, noColour, ascii) : look(environment);
    }

    Look look(Map<String, String> environment) {
        return Look.from(environment, noColour, ascii);
    }
}
