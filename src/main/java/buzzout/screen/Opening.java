package buzzout.screen;

import java.io.IOException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** Gets ready, in the background, what a screen on this terminal waits for; the terminal stays as it is. */
public final class Opening {
    private final FutureTask<String> asFound = new FutureTask<>(() -> Stty.run("-g"));

    private Opening() {}

    /** Begins to. */
    public static Opening begin() {
        Opening opening = new Opening();
        Thread thread = new Thread(opening::getReady, "opening");
        thread.setDaemon(true);
        // What cannot be loaded fails whoever needs it, who says so.
        thread.setUncaughtExceptionHandler((itself, why) -> {});
        thread.start();
        return opening;
    }

    private void getReady() {
        asFound.run();
        Signals.load();
    }

    /** How {@code stty} found the terminal, in words that bring it back to that. */
    String asFound() throws IOException {
        try {
            return asFound.get();
        } catch (ExecutionException e) {
            throw e.getCause() instanceof IOException why ? why : new IOException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while the terminal was looked at", e);
        }
    }
}
