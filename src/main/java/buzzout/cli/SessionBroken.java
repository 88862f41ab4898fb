package buzzout.cli;

import java.nio.file.Path;

/** The program itself failed in the middle of a session, whose log goes on to that moment. */
final class SessionBroken extends IllegalStateException {
    private static final long serialVersionUID = 1;

    private final transient Path log;

    SessionBroken(Path log, Throwable cause) {
        super(cause instanceof LiveBench.Stopped ? cause.getCause() : cause);
        this.log = log;
    }

    Path log() {
        return log;
    }
}
