package buzzout.screen;

import java.util.Map;

/**
 * How a session may be heard.
 *
 * @param offered whether there is anything to hear: what is over makes no tones
 * @param muted whether tones are silent until the person wants them
 * @param bellOnly whether the terminal's bell stands for the sound system
 */
public record Sound(boolean offered, boolean muted, boolean bellOnly) {
    public static final Sound NONE = new Sound(false, true, true);

    /** Far away, over ssh, a sound system is in the wrong room; the bell comes through. */
    public static Sound from(Map<String, String> environment, boolean quiet) {
        return new Sound(
                true, quiet, !environment.getOrDefault("SSH_CONNECTION", "").isEmpty());
    }

    Sound turned() {
        return offered ? new Sound(true, !muted, bellOnly) : this;
    }
}
