package buzzout.probe;

import java.util.concurrent.TimeUnit;

/** Time for a link and its conversation: real, or simulated so that a session takes no longer than it must. */
public interface Stopwatch {
    /** Microseconds since some moment; never falls. */
    long micros();

    /** Lets this much time pass, or less if the monitor, which the caller holds, is notified meanwhile. */
    void waitOn(Object monitor, long micros) throws InterruptedException;

    /** Real time. */
    static Stopwatch real() {
        return new Stopwatch() {
            @Override
            public long micros() {
                return System.nanoTime() / 1000;
            }

            @Override
            public void waitOn(Object monitor, long micros) throws InterruptedException {
                TimeUnit.MICROSECONDS.timedWait(monitor, micros);
            }
        };
    }

    /** Time that passes only while someone waits, and at once. */
    static Stopwatch simulated() {
        return new Stopwatch() {
            private long now;

            @Override
            public synchronized long micros() {
                return now;
            }

            @Override
            public synchronized void waitOn(Object monitor, long micros) {
                now += Math.max(micros, 0);
            }
        };
    }
}
