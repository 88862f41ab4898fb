package buzzout.probe;

import buzzout.plan.Plan;
import java.util.function.Consumer;

/**
 * A daemon thread that talks to a probe and hands on what happens, until closed. The consumers run on that thread and
 * must not wait; the {@code add} of a queue is a good one.
 */
public final class LiveProbe implements AutoCloseable {
    private static final long PATIENCE_MILLIS = 2_000;

    private final Thread thread;
    private volatile boolean closing;

    private LiveProbe(ProbeTalk talk, Consumer<ProbeEvent> consumer, Consumer<Throwable> failed) {
        thread = new Thread(() -> run(talk, consumer, failed), "probe");
        thread.setDaemon(true);
    }

    /**
     * Starts to talk.
     *
     * @param failed told if the program itself fails in that thread
     */
    public static LiveProbe start(
            Plan plan,
            LinkSource source,
            SettleTime settle,
            Consumer<ProbeEvent> consumer,
            Consumer<Throwable> failed) {
        LiveProbe probe = new LiveProbe(new ProbeTalk(plan, source, settle), consumer, failed);
        probe.thread.start();
        return probe;
    }

    private void run(ProbeTalk talk, Consumer<ProbeEvent> consumer, Consumer<Throwable> failed) {
        try (talk) {
            while (!closing) {
                talk.step().forEach(consumer);
            }
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException | Error fault) {
            failed.accept(fault);
        }
    }

    boolean isRunning() {
        return thread.isAlive();
    }

    /** Closes the link and waits a moment for the thread to end. */
    @Override
    public void close() {
        closing = true;
        thread.interrupt();
        try {
            thread.join(PATIENCE_MILLIS);
        } catch (InterruptedException left) {
            Thread.currentThread().interrupt();
        }
    }
}
