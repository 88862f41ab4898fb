package buzzout.session;

import java.util.List;
import java.util.Optional;

/**
 * Every key pressed once in reading order, without being called.
 *
 * @param from how many presses had been made when it began
 * @param came its presses as they came, once it is over and they have been lined up with the keys
 */
public record ReadThrough(int from, Optional<List<Press>> came) {
    /** Whether presses still belong to it. */
    public boolean isRunning() {
        return came.isEmpty();
    }
}
