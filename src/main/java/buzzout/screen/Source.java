package buzzout.screen;

/** Where a screen gets what it shows, and where it passes on what the person asks for. */
public interface Source {
    /** What is known now. Called some hundred times a second, so it only hands out what is ready. */
    Snapshot now();

    /** Takes what the person asked for; returns at once. */
    void ask(Request request);
}
