package buzzout.screen;

import java.util.Optional;

/**
 * How a screen is set; of this, only the sound changes while it is open.
 *
 * @param unit the soldered copy's mark, such as {@code Q-03}
 * @param log where the session is being written
 * @param simulated whether the board is simulated, so that the person's own keys press its keys
 */
public record Setting(Optional<String> unit, Optional<String> log, Look look, boolean simulated, Sound sound) {
    /** Without tones. */
    public Setting(Optional<String> unit, Optional<String> log, Look look, boolean simulated) {
        this(unit, log, look, simulated, Sound.NONE);
    }

    Setting with(Sound other) {
        return new Setting(unit, log, look, simulated, other);
    }
}
