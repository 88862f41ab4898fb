package buzzout.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/** Time on the processor of the thread that asks, so that whatever else runs on the machine counts as little as it can. */
final class Processor {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private Processor() {}

    interface Work {
        void run() throws IOException;
    }

    static double millis(Work work) {
        long start = THREADS.getCurrentThreadCpuTime();
        try {
            work.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return (THREADS.getCurrentThreadCpuTime() - start) / 1e6;
    }
}
