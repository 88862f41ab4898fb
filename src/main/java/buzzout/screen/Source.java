package buzzout.screen;

/** Where a screen gets what it shows, and where it passes on what the person asks for. */
public interface Source {
    /** What is known now. Called some hundred times a second, so it only hands out what is ready. */
    Snapshot now();

    /** Waits until something new has become known since it was last waited for, but no longer than so many milliseconds. */
    default void awaitNews(long mostMillis) throws InterruptedException {
        Thread.sleep(mostMillis);
    }

    /** Takes what the person asked for; returns at once. */
    void ask(Request request);
}
