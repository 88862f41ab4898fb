package buzzout.cli;

import buzzout.screen.Leaving;
import buzzout.screen.Signals;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** How a session is left once its log is complete: what is said then, and the exit status. */
final class LastWord {
    private static final int HANGUP = 1;
    private static final Map<Integer, String> NAMES = Map.of(HANGUP, "HUP", 2, "INT", 15, "TERM");

    private final Signals signals;
    private final Leaving leaving;
    private boolean cutShort;

    /** Says what there is to say, and gives the exit status. */
    interface Saying {
        int say() throws Failure, IOException;
    }

    LastWord(Signals signals, Leaving leaving) {
        this.signals = signals;
        this.leaving = leaving;
    }

    /**
     * The exit status, once what was weighed has been said. Weighing can take seconds; a signal that comes meanwhile does
     * not wait for it, and nothing is said then.
     */
    int unlessSignalled(Callable<Saying> weighing) throws Failure, IOException, InterruptedException {
        CountDownLatch over = new CountDownLatch(1);
        FutureTask<Saying> task = new FutureTask<>(weighing) {
            @Override
            protected void done() {
                over.countDown();
            }
        };
        signals.then(over::countDown);
        int known = leaving instanceof Leaving.Signalled ? 1 : 0;
        Thread thread = new Thread(task, "findings");
        thread.setDaemon(true);
        thread.start();
        if (signals.count() == known) {
            over.await();
        }
        cutShort = !task.isDone();
        int status = cutShort ? Status.FINE : result(task).say();
        OptionalInt signal = signal();
        return signal.isPresent() ? Status.SIGNAL + signal.getAsInt() : status;
    }

    private static Saying result(FutureTask<Saying> task) throws Failure, IOException, InterruptedException {
        try {
            return task.get();
        } catch (ExecutionException e) {
            Throwable cause = e.getCause();
            if (cause instanceof Failure failure) {
                throw failure;
            } else if (cause instanceof IOException trouble) {
                throw trouble;
            } else if (cause instanceof Error error) {
                throw error;
            }
            throw cause instanceof RuntimeException fault ? fault : new IllegalStateException(cause);
        }
    }

    private OptionalInt signal() {
        return leaving instanceof Leaving.TerminalGone && signals.caught().isEmpty()
                ? OptionalInt.of(HANGUP)
                : signals.caught();
    }

    /** Why it ended although nobody quit, and how to go on; where a signal came. */
    Optional<String> explanation(Optional<Path> log, boolean simulated) {
        if (signal().isEmpty()) {
            return Optional.empty();
        }
        int number = signal().getAsInt();
        String why = leaving instanceof Leaving.TerminalGone
                ? "The terminal went away"
                : "Signal " + NAMES.getOrDefault(number, String.valueOf(number)) + " ended the session";
        return Optional.of(why
                + log.map(path -> "; its log is complete."
                                + (cutShort ? " `buzzout diagnose " + path + "` prints the findings." : "")
                                + (simulated ? "" : " `buzzout run --resume " + path + "` goes on with it."))
                        .orElse("."));
    }
}
