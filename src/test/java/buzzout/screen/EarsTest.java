package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.session.Session;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Tones that are played beside the session, never in its way. */
@Timeout(60)
class EarsTest {
    private final BlockingQueue<Tone> played = new LinkedBlockingQueue<>();
    private final Semaphore lastsUntil = new Semaphore(0);
    private final List<String> opened = new ArrayList<>();
    private final Sitting sitting = Views.sitting().found().quietCheckDone();
    private final AtomicReference<Session> newest =
            new AtomicReference<>(sitting.snapshot().session());

    private Ears ears(boolean muted) {
        Player slow = tone -> {
            played.add(tone);
            lastsUntil.acquireUninterruptibly();
        };
        return new Ears(
                        newest::get,
                        () -> {
                            opened.add("the player");
                            return slow;
                        },
                        muted)
                .start();
    }

    private void hear(Ears ears, Session session) {
        newest.set(session);
        ears.hear();
    }

    private Tone next() throws InterruptedException {
        Tone tone = played.poll(30, TimeUnit.SECONDS);
        lastsUntil.release();
        return java.util.Objects.requireNonNull(tone, "nothing was played");
    }

    @Test
    void what_happens_during_a_tone_is_told_by_one_tone_after_it() throws InterruptedException {
        Ears ears = ears(false);
        hear(ears, sitting.snapshot().session());
        hearUntilPlayed(ears, 0);
        for (int key = 1; key < 40; key++) {
            hear(ears, sitting.press(key).snapshot().session()); // would hang if it waited for the tone that lasts
        }
        assertEquals(Tone.GOOD, next());
        assertEquals(Tone.WRONG, next(), "the worst of 39 presses");
        hear(ears, sitting.press(0).snapshot().session());
        assertEquals(Tone.GOOD, next());
        assertTrue(played.isEmpty());
        assertEquals(List.of("the player"), opened);
    }

    /** The first session may still lie unheard when the second comes; then nothing has changed that deserves a tone. */
    private void hearUntilPlayed(Ears ears, int key) throws InterruptedException {
        while (played.isEmpty()) {
            hear(ears, sitting.press(key).snapshot().session());
            Thread.sleep(5);
        }
    }

    @Test
    void a_sound_system_that_fails_is_told_of_and_ends_nothing_else() throws InterruptedException {
        Ears ears = new Ears(
                        newest::get,
                        () -> {
                            throw new NoClassDefFoundError("javax/sound");
                        },
                        false)
                .start();
        for (int key = 0; ears.trouble().isEmpty(); key = (key + 1) % 46) {
            hear(ears, sitting.press(key).snapshot().session());
            Thread.sleep(5);
        }
        assertEquals(
                "Tones are off: the sound system failed (java.lang.NoClassDefFoundError: javax/sound). Please report it;"
                        + " the session goes on.",
                ears.trouble().orElseThrow());
        hear(ears, sitting.press(0).snapshot().session());
    }

    @Test
    void a_player_is_opened_only_when_there_is_something_to_hear() throws InterruptedException {
        Ears ears = ears(true);
        for (int key = 0; key < 5; key++) {
            hear(ears, sitting.press(key).snapshot().session());
            Thread.sleep(50);
        }
        assertEquals(List.of(), opened);
        assertTrue(ears.isMuted());
        ears.mute(false);
        hearUntilPlayed(ears, 0);
        assertEquals(Tone.GOOD, next());
        assertEquals(List.of("the player"), opened);
    }

    @Test
    void a_press_that_closes_more_a_moment_later_rings_once_and_wrong() throws InterruptedException {
        Session before = sitting.snapshot().session();
        Session good = sitting.press(0).snapshot().session();
        Session wrong = Stream.iterate(1, key -> key + 1)
                .map(key -> sitting.press(key).snapshot().session())
                .filter(after -> Tones.between(before, after).equals(Optional.of(Tone.WRONG)))
                .findFirst()
                .orElseThrow();
        newest.set(before);
        Ears ears = ears(false);
        Thread.sleep(200); // in which they take in where the session stands
        hear(ears, good);
        newest.set(wrong); // nobody has come to tell them yet: a frame is being drawn
        assertEquals(Tone.WRONG, next());
        ears.hear();
        Thread.sleep(100);
        assertTrue(played.isEmpty());
    }

    @Test
    void nothing_rings_any_more_once_they_are_closed() throws InterruptedException {
        AtomicInteger rings = new AtomicInteger();
        Sitting found = Views.sitting().found();
        Session before = found.snapshot().session();
        Session done = found.quietCheckDone().snapshot().session();
        Ears ears = new Ears(newest::get, () -> new Bell(rings::incrementAndGet), false).start();
        while (rings.get() == 0) {
            hear(ears, before);
            Thread.sleep(50);
            hear(ears, done);
            Thread.sleep(50);
        }
        ears.close();
        int rung = rings.get();
        Thread.sleep(400); // in which the other two of three would ring
        assertEquals(rung, rings.get());
    }
}
