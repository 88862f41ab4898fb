package buzzout.journal;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * What a session log says about itself before its first event.
 *
 * @param program the version of the program that wrote it
 * @param unit the mark of the soldered copy, such as {@code Q-03}
 * @param planFile what the plan's file was called
 * @param planText the whole plan, so that the log needs no other file
 */
public record LogHeader(
        Optional<String> program,
        Optional<OffsetDateTime> started,
        Optional<String> unit,
        Optional<String> planFile,
        String planText) {}
