package buzzout.screen;

import java.io.IOException;
import java.util.Optional;

/** Gets ready, in the background, what a screen on this terminal waits for; the terminal stays as it is. */
public final class Opening {
    private final Thread thread;
    /** Both are to be looked at when that thread is over. */
    private String asFound = "";

    private Optional<IOException> trouble = Optional.of(new IOException("the terminal could not be looked at"));

    private Opening(Runnable before) {
        thread = new Thread(() -> getReady(before), "opening");
        thread.setDaemon(true);
        // What cannot be loaded fails whoever needs it, who says so.
        thread.setUncaughtExceptionHandler((itself, why) -> {});
    }

    /** Begins to, after something else that takes its time and is waited for sooner. */
    public static Opening begin(Runnable before) {
        Opening opening = new Opening(before);
        opening.thread.start();
        return opening;
    }

    private void getReady(Runnable before) {
        before.run();
        try {
            asFound = Stty.run("-g");
            trouble = Optional.empty();
        } catch (IOException e) {
            trouble = Optional.of(e);
        }
        Signals.load();
    }

    /** How {@code stty} found the terminal, in words that bring it back to that. */
    String asFound() throws IOException {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while the terminal was looked at", e);
        }
        if (trouble.isPresent()) {
            throw trouble.get();
        }
        return asFound;
    }
}
