package buzzout.report;

import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.Optional;

/**
 * One session of a batch, its evidence weighed.
 *
 * @param name the log's name, as the person would find it
 */
public record WeighedLog(String name, Outcome outcome) {
    /** Oldest first; those that do not say when they began come before all others, by name. */
    static final Comparator<WeighedLog> BY_TIME = Comparator.comparingLong((WeighedLog log) ->
                    log.started().map(OffsetDateTime::toEpochSecond).orElse(Long.MIN_VALUE))
            .thenComparing(WeighedLog::name);

    Optional<OffsetDateTime> started() {
        return outcome.started();
    }
}
