package buzzout.screen;

import java.util.Optional;

/**
 * What stays the same while a screen is open.
 *
 * @param unit the soldered copy's mark, such as {@code Q-03}
 * @param log where the session is being written
 * @param simulated whether the board is simulated, so that the person's own keys press its keys
 */
public record Setting(Optional<String> unit, Optional<String> log, Look look, boolean simulated) {}
