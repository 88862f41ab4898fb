package buzzout.probe;

import buzzout.plan.Plan;
import java.util.function.Consumer;

/**
 * A daemon thread that talks to a probe and hands on what happens, until closed. The consumer runs on that thread and
 * must not wait; the {@code add} of a queue is a good one.
 */
public final class LiveProbe implements AutoCloseable {
    private static final long PATIENCE_MILLIS = 2_000;

    private final Thread thread;
    private volatile boolean closing;

    private LiveProbe(ProbeTalk talk, Consumer<ProbeEvent> consumer) {
        thread = new Thread(() -> run(talk, consumer), "probe");
        thread.setDaemon(true);
    }

    public static LiveProbe start(Plan plan, LinkSource source, Consumer<ProbeEvent> consumer) {
        LiveProbe probe = new LiveProbe(new ProbeTalk(plan, source), consumer);
        probe.thread.start();
        return probe;
    }

    private void run(ProbeTalk talk, Consumer<ProbeEvent> consumer) {
        try (talk) {
            while (!closing) {
                talk.step().forEach(consumer);
            }
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException fault) {
            consumer.accept(new ProbeEvent.LinkLost("The program failed while talking to the probe, please report it: "
                    + Printable.of(fault.toString())));
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
