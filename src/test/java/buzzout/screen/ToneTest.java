package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ToneTest {
    @ParameterizedTest
    @EnumSource
    void is_as_long_as_its_notes_and_neither_clicks_nor_clips(Tone tone) {
        byte[] samples = Synthesiser.samples(tone);
        int millis = tone.notes().stream().mapToInt(Tone.Note::millis).sum();
        assertEquals(millis, 1000.0 * samples.length / 2 / Synthesiser.RATE, 1);
        assertTrue(millis <= 350, "short enough for the next press");
        int loudest = 0;
        int steepest = 0;
        int before = 0;
        for (int at = 0; at < samples.length; at += 2) {
            int sample = (short) ((samples[at] & 0xFF) | (samples[at + 1] << 8));
            loudest = Math.max(loudest, Math.abs(sample));
            steepest = Math.max(steepest, Math.abs(sample - before));
            before = sample;
        }
        assertTrue(loudest > 9_000 && loudest < 10_000, () -> "loudest sample");
        assertTrue(steepest < 1_900, "a jump is a click");
        assertTrue(Math.abs(before) < 50, "it ends in silence");
    }

    @Test
    void no_two_sound_alike_by_speaker_or_by_bell() {
        assertEquals(
                Tone.values().length,
                Stream.of(Tone.values()).map(Tone::notes).distinct().count());
        assertEquals(
                Tone.values().length,
                Stream.of(Tone.values()).map(Tone::rings).distinct().count());
    }

    @Test
    void a_bell_rings_as_often_as_the_tone_says_and_one_that_fails_is_silent() {
        StringBuilder rings = new StringBuilder();
        new Bell(() -> rings.append('!')).play(Tone.WRONG);
        assertEquals("!!", rings.toString());
        new Bell(() -> {
                    throw new java.io.IOException("no terminal");
                })
                .play(Tone.WRONG);
    }

    @Test
    void far_away_only_the_bell_is_heard() {
        assertTrue(Sound.from(Map.of("SSH_CONNECTION", "192.0.2.1 1 192.0.2.2 22"), false)
                .bellOnly());
        assertEquals(new Sound(true, true, false), Sound.from(Map.of(), true));
        assertEquals(new Sound(true, false, false), Sound.from(Map.of(), true).turned());
        assertEquals(Sound.NONE, Sound.NONE.turned());
    }
}
