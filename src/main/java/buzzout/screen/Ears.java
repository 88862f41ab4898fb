package buzzout.screen;

import buzzout.session.Session;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/**
 * Plays the tones of a session in a thread of its own. It is only told that there is something new and asks for the newest
 * itself, so that it can never hold anybody up: what happens during a tone is told by one tone after it.
 */
public final class Ears {
    /**
     * What else a press closes comes with the same sweep or the next, a third of a millisecond later; the rest is for what
     * stands between a probe and its session.
     */
    private static final long SETTLING_MILLIS = 5;

    /** A ring takes no time, and a loudspeaker's tone may end after the screen. */
    private static final long MOST_LEFT_MILLIS = 100;

    private final Semaphore news = new Semaphore(0);
    private final Thread listening = new Thread(this::listen, "tones");
    private final Supplier<Session> newest;
    private final Supplier<Player> opening;
    private volatile boolean muted;
    private volatile Optional<String> trouble = Optional.empty();

    /** A player is opened when the first tone is due: opening a sound system takes time that a start has not. */
    Ears(Supplier<Session> newest, Supplier<Player> opening, boolean muted) {
        this.newest = newest;
        this.opening = opening;
        this.muted = muted;
    }

    /**
     * Ears on the sound system, or where there is none on the bell of the terminal that the program was started from.
     *
     * @param newest the session as it is now; asked from another thread
     */
    public static Ears open(Supplier<Session> newest, Sound sound) {
        return open(newest, sound, Bell.ofControllingTerminal());
    }

    /** The same with another bell. */
    static Ears open(Supplier<Session> newest, Sound sound, Player bell) {
        return new Ears(
                        newest,
                        () -> sound.bellOnly() ? bell : Loudspeaker.open().orElse(bell),
                        sound.muted())
                .start();
    }

    Ears start() {
        listening.setDaemon(true);
        listening.start();
        return this;
    }

    /** Breaks a tone off between its rings, and waits until nothing more can ring in what comes after. */
    public void close() {
        muted = true;
        listening.interrupt();
        try {
            listening.join(MOST_LEFT_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The session may have changed; returns at once. */
    public void hear() {
        news.release();
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
            Optional<Session> told = newest();
            Optional<Player> player = Optional.empty();
            while (told.isPresent()) {
                news.acquire();
                Thread.sleep(SETTLING_MILLIS);
                news.drainPermits();
                Optional<Session> settled = newest();
                Optional<Tone> tone = settled.isEmpty() || settled.equals(told)
                        ? Optional.empty()
                        : Tones.between(told.get(), settled.get());
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

    /** Nothing once the session has failed: whoever shows it says so. */
    private Optional<Session> newest() {
        try {
            return Optional.of(newest.get());
        } catch (IllegalStateException failed) {
            return Optional.empty();
        }
    }
}
