package buzzout.probe;

/** The probe's microseconds, modulo 2^32 and from 0 after each reset, as one count that never falls. */
final class ProbeClock {
    private boolean fresh = true;
    private boolean started;
    private long lastRaw;
    private long total;
    private long delivered;
    private long lastHost;

    /** The probe's count may start anywhere from here; the host's time bridges the gap. */
    void restart() {
        fresh = true;
    }

    /** Microseconds since the first stamp. Stamps less than 2^31 apart, 35 minutes, are put in order. */
    long micros(long raw, long hostMicros) {
        if (fresh) {
            total = started ? delivered + Math.max(hostMicros - lastHost, 0) : 0;
            fresh = false;
            started = true;
        } else {
            total += (int) (raw - lastRaw);
        }
        lastRaw = raw;
        lastHost = hostMicros;
        delivered = Math.max(delivered, total);
        return delivered;
    }
}
