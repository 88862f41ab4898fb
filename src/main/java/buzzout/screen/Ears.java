package buzzout.screen;

import buzzout.session.PressTiming;
import buzzout.session.Session;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.function.Supplier;

/**
 * Plays the tones of a session in a thread of its own. It is handed sessions as they change, and keeps only the newest,
 * so that it can never hold anybody up: what happens during a tone is told by one tone after it.
 */
public final class Ears {
    /** What a press closes may still come so long, and a frame between. */
    private static final long SETTLING_MILLIS = PressTiming.ONSET_MICROS / 1_000 + 1;

    /** A ring takes no time, and a loudspeaker's tone may end after the screen. */
    private static final long MOST_LEFT_MILLIS = 100;

    private final BlockingQueue<Session> newest = new ArrayBlockingQueue<>(1);
    private final Thread listening = new Thread(this::listen, "tones");
    private final Supplier<Player> opening;
    private volatile boolean muted;
    private volatile Optional<String> trouble = Optional.empty();

    /** A player is opened when the first tone is due: opening a sound system takes time that a start has not. */
    Ears(Supplier<Player> opening, boolean muted) {
        this.opening = opening;
        this.muted = muted;
    }

    /** Ears on the sound system, or where there is none on the bell of the terminal that the program was started from. */
    public static Ears open(Sound sound) {
        return open(sound, Bell.ofControllingTerminal());
    }

    /** The same with another bell. */
    static Ears open(Sound sound, Player bell) {
        return new Ears(() -> sound.bellOnly() ? bell : Loudspeaker.open().orElse(bell), sound.muted()).start();
    }

    Ears start() {
        listening.setDaemon(true);
        listening.start();
        return this;
    }

    /** Breaks a tone off between its rings, and waits until nothing more can ring in what comes after. */
    void close() {
        muted = true;
        listening.interrupt();
        try {
            listening.join(MOST_LEFT_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Takes the session as it is now; returns at once. One thread calls this. */
    public void hear(Session session) {
        newest.poll();
        newest.offer(session);
    }

    public void mute(boolean silent) {
        muted = silent;
    }

    public boolean isMuted() {
        return muted;
    }

    /** Why no tones come any more, as a sentence: a sound system that fails is no reason to end a session. */
    public Optional<String> trouble() {
        return trouble;
    }

    private void listen() {
        try {
            listenOn();
        } catch (RuntimeException | Error e) {
            trouble = Optional.of("Tones are off: the sound system failed ("
                    + Clean.text(String.valueOf(e), true).strip()
                    + "). Please report it; the session goes on.");
        }
    }

    private void listenOn() {
        try {
            Session told = newest.take();
            Optional<Player> player = Optional.empty();
            while (true) {
                Session now = newest.take();
                Thread.sleep(SETTLING_MILLIS);
                Session settled = Optional.ofNullable(newest.poll()).orElse(now);
                Optional<Tone> tone = settled.equals(told) ? Optional.empty() : Tones.between(told, settled);
                told = settled;
                if (tone.isPresent() && !muted) {
                    player = player.or(() -> Optional.of(opening.get()));
                    player.get().play(tone.get());
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
