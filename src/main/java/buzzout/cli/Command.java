package buzzout.cli;

import java.io.IOException;

/** A command that was given all it needs. */
interface Command {
    /** Carries it out and returns the exit status. */
    int run() throws Failure, IOException, InterruptedException;
}
