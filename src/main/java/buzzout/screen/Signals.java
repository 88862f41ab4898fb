package buzzout.screen;

import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Catches the signals that end a program, so that the thread that draws restores the terminal itself: a shutdown hook
 * would race it. Reached by reflection, because the compiler warns of {@code sun.misc.Signal} and cannot be told not
 * to; where a JVM has no such class, its own handling stays.
 */
final class Signals implements AutoCloseable {
    private static final List<String> ENDING = List.of("TERM", "HUP", "INT");

    private final Deque<Runnable> restore = new ArrayDeque<>();
    private final AtomicInteger caught = new AtomicInteger();

    private Signals() {}

    /** Runs {@code then} on TERM, HUP and INT, until closed. */
    static Signals on(Runnable then) {
        Signals signals = new Signals();
        for (String name : ENDING) {
            try {
                signals.handle(name, then);
            } catch (ReflectiveOperationException e) {
                // A JVM started with -Xrs, or another vendor's: the signal ends the program at once, as it did before.
            }
        }
        return signals;
    }

    private void handle(String name, Runnable then) throws ReflectiveOperationException {
        Class<?> type = Class.forName("sun.misc.Signal");
        Class<?> handlerType = Class.forName("sun.misc.SignalHandler");
        Method handle = type.getMethod("handle", type, handlerType);
        Object signal = type.getConstructor(String.class).newInstance(name);
        int number = (int) type.getMethod("getNumber").invoke(signal);
        Object ours = Proxy.newProxyInstance(
                Signals.class.getClassLoader(), new Class<?>[] {handlerType}, (proxy, method, arguments) -> {
                    if (method.getName().equals("handle")) {
                        caught.compareAndSet(0, number);
                        then.run();
                    }
                    return null;
                });
        Object before = handle.invoke(null, signal, ours);
        if (before == handlerType.getField("SIG_IGN").get(null)) {
            // Started under nohup or the like: stay deaf to it.
            handle.invoke(null, signal, before);
            return;
        }
        restore.push(() -> {
            try {
                handle.invoke(null, signal, before);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(name, e);
            }
        });
    }

    /** The number of the first signal that came. */
    OptionalInt caught() {
        int number = caught.get();
        return number == 0 ? OptionalInt.empty() : OptionalInt.of(number);
    }

    @Override
    public void close() {
        restore.forEach(Runnable::run);
    }
}
