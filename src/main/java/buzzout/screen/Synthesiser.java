package buzzout.screen;

import java.io.ByteArrayOutputStream;

/** Tones as samples: sines, each note faded in and out so that it does not click. */
final class Synthesiser {
    /** Samples a second, one channel, 16 bits each, signed, low byte first. */
    static final int RATE = 44_100;

    private static final double LOUDNESS = 0.3;
    private static final int FADE_MILLIS = 8;

    private Synthesiser() {}

    static byte[] samples(Tone tone) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        for (Tone.Note note : tone.notes()) {
            int count = RATE * note.millis() / 1000;
            for (int at = 0; at < count; at++) {
                double wave = Math.sin(2 * Math.PI * note.hertz() * at / RATE);
                int sample = (int) Math.round(wave * fade(at, count) * LOUDNESS * Short.MAX_VALUE);
                bytes.write(sample);
                bytes.write(sample >> 8);
            }
        }
        return bytes.toByteArray();
    }

    private static double fade(int at, int count) {
        double length = RATE * FADE_MILLIS / 1000.0;
        return Math.min(1, Math.min(at, count - 1 - at) / length);
    }
}
