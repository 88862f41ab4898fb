package buzzout.screen;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Whether there is a terminal that a screen can be drawn on. */
final class Terminals {
    private Terminals() {}

    static Optional<String> obstacle(Map<String, String> environment) {
        String kind = environment.getOrDefault("TERM", "");
        if (System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows")) {
            return Optional.of(
                    "The screen does not work in a Windows console; --window shows it in a window of its own.");
        } else if (!bothEndsAreTerminals()) {
            return Optional.of("Input or output is no terminal.");
        } else if (kind.isEmpty() || kind.equals("dumb")) {
            return Optional.of("The terminal cannot place text (TERM is \"" + Clean.text(kind, true) + "\").");
        }
        return Optional.empty();
    }

    /**
     * The launcher has seen it; else, a {@code System.console()} is there even without a terminal from Java 22 on, and
     * another process takes its time.
     */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean bothEndsAreTerminals() {
        if (Boolean.getBoolean("buzzout.terminal")) {
            return true;
        }
        if (Runtime.version().feature() < 22) {
            return System.console() != null;
        }
        try {
            Process test = new ProcessBuilder("/bin/sh", "-c", "test -t 0 && test -t 1")
                    .inheritIO()
                    .start();
            return test.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
