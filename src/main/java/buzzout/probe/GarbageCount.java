package buzzout.probe;

import java.util.Optional;

/** Counts lines that were not understood and reports them at a calm pace, however fast a wrong device talks. */
final class GarbageCount {
    private final long pace;
    private long total;
    private long unreported;
    private long notBefore = Long.MIN_VALUE;
    private String sample = "";

    GarbageCount(long paceMicros) {
        this.pace = paceMicros;
    }

    void add(String line) {
        total++;
        unreported++;
        sample = line;
    }

    long total() {
        return total;
    }

    Optional<ProbeEvent> report(long now) {
        if (unreported == 0 || now < notBefore) {
            return Optional.empty();
        }
        ProbeEvent garbled = new ProbeEvent.Garbled(unreported, sample);
        unreported = 0;
        notBefore = now + pace;
        return Optional.of(garbled);
    }
}
