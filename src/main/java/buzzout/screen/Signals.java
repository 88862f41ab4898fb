package buzzout.screen;

import java.lang.reflect.Proxy;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Catches the signals that end a program, so that the thread that draws restores the terminal itself, and the one that
 * writes the log writes its end: a shutdown hook would race them. Reached by reflection, because the compiler warns of
 * {@code sun.misc.Signal} and cannot be told not to; where a JVM has no such class, its own handling stays.
 */
public final class Signals implements AutoCloseable {
    private static final List<String> ENDING = List.of("TERM", "HUP", "INT");

    private final Deque<Runnable> restore = new ArrayDeque<>();
    private final AtomicInteger first = new AtomicInteger();
    private final AtomicInteger count = new AtomicInteger();
    private volatile Runnable then = () -> {};

    private Signals() {}

    /** Catches TERM, HUP and INT, until closed. */
    public static Signals on() {
        Signals signals = new Signals();
        for (String name : ENDING) {
            try {
                signals.handle(name);
            } catch (ReflectiveOperationException e) {
                // A JVM started with -Xrs, or another vendor's: the signal ends the program at once, as it did before.
            }
        }
        return signals;
    }

    /** Makes the class that handlers are of, so that catching takes no time later. */
    static void load() {
        try {
            handler(() -> {});
        } catch (ReflectiveOperationException e) {
            // There will be no handler.
        }
    }

    private static Object handler(Runnable what) throws ReflectiveOperationException {
        return Proxy.newProxyInstance(
                Signals.class.getClassLoader(),
                new Class<?>[] {Class.forName("sun.misc.SignalHandler")},
                (proxy, method, arguments) -> {
                    if (method.getName().equals("handle")) {
                        what.run();
                    }
                    return null;
                });
    }

    /** What to do whenever the terminal gets another size, from now on; in a thread of the system's. */
    static void whenResized(Runnable then) {
        try {
            handled(signal("WINCH"), handler(then));
        } catch (ReflectiveOperationException e) {
            // It keeps the size that it had at first.
        }
    }

    private void handle(String name) throws ReflectiveOperationException {
        Object signal = signal(name);
        int number = (int) signal.getClass().getMethod("getNumber").invoke(signal);
        Object before = handled(signal, handler(() -> {
            first.compareAndSet(0, number);
            count.incrementAndGet();
            then.run();
        }));
        if (before
                == Class.forName("sun.misc.SignalHandler").getField("SIG_IGN").get(null)) {
            // Started under nohup or the like: stay deaf to it.
            handled(signal, before);
            return;
        }
        restore.push(() -> {
            try {
                handled(signal, before);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(name, e);
            }
        });
    }

    private static Object signal(String name) throws ReflectiveOperationException {
        return Class.forName("sun.misc.Signal").getConstructor(String.class).newInstance(name);
    }

    /** Gives a signal a handler, and returns the one it had. */
    private static Object handled(Object signal, Object handler) throws ReflectiveOperationException {
        Class<?> type = signal.getClass();
        return type.getMethod("handle", type, Class.forName("sun.misc.SignalHandler"))
                .invoke(null, signal, handler);
    }

    /** What the next signal does; in a thread of the system's, so it must not take long. */
    public void then(Runnable next) {
        then = next;
    }

    /** The number of the first signal that came. */
    public OptionalInt caught() {
        int number = first.get();
        return number == 0 ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** How many came. */
    public int count() {
        return count.get();
    }

    @Override
    public void close() {
        restore.forEach(Runnable::run);
    }
}
