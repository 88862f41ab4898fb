package buzzout.screen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The terminal's bell: one pitch, so that tones differ in how often it rings. Heard through ssh too. */
final class Bell implements Player {
    /** Terminals drop rings that come closer. Judgement. */
    private static final int APART_MILLIS = 150;

    private static final Path CONTROLLING_TERMINAL = Path.of("/dev/tty");
    private static final byte[] RING = {7};

    private final Ringer ringer;

    /** Rings once. */
    interface Ringer {
        void ring() throws IOException;
    }

    /** The bell of the terminal that the program was started from, where there is one, whatever its output goes to. */
    static Bell ofControllingTerminal() {
        return new Bell(() -> Files.write(CONTROLLING_TERMINAL, RING, StandardOpenOption.WRITE));
    }

    Bell(Ringer ringer) {
        this.ringer = ringer;
    }

    @Override
    public void play(Tone tone) {
        try {
            for (int ring = 0; ring < tone.rings(); ring++) {
                ringer.ring();
                Thread.sleep(APART_MILLIS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            // No terminal, no bell; whoever draws on a terminal meets the same trouble, and says so.
            return;
        }
    }
}
