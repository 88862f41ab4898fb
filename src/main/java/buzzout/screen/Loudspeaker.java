package buzzout.screen;

import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** The sound system, kept open from the first tone on. */
final class Loudspeaker implements Player {
    private final SourceDataLine line;

    private Loudspeaker(SourceDataLine line) {
        this.line = line;
    }

    /** Nothing where there is no sound system, or none that can be used; this can take a second. */
    static Optional<Player> open() {
        AudioFormat format = new AudioFormat(Synthesiser.RATE, Short.SIZE, 1, true, false);
        try {
            SourceDataLine line = AudioSystem.getSourceDataLine(format);
            line.open(format);
            line.start();
            return Optional.of(new Loudspeaker(line));
        } catch (LineUnavailableException | IllegalArgumentException | SecurityException e) {
            return Optional.empty();
        } catch (LinkageError e) {
            // A Java without its desktop part.
            return Optional.empty();
        }
    }

    @Override
    public void play(Tone tone) {
        byte[] samples = Synthesiser.samples(tone);
        line.write(samples, 0, samples.length);
        line.drain();
    }
}
