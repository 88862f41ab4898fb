package buzzout.probe;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Controller;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** What the probe sketch does, without a microcontroller: commands and sweeps in, bodies of lines out. */
final class SimulatedSketch {
    static final int MOST_PINS = 64;
    private static final long BEAT = 250_000;
    private static final int READ_MICROS = 6;
    private static final long MODULUS = 1L << 32;

    private final Controller controller;
    private final Consumer<String> say;
    private List<String> pins = new ArrayList<>();
    private int settleMicros = 10;
    private boolean going;
    private Pairs closed = Pairs.NONE;
    private long bootedAt;
    private long wentAt;
    private long nextBeat;
    private long sequence;
    private long losing;
    private long lost;

    SimulatedSketch(Controller controller, Consumer<String> say) {
        this.controller = controller;
        this.say = say;
    }

    /** Power comes, or a reset: nothing is remembered. */
    void boot(long now) {
        pins = new ArrayList<>();
        settleMicros = 10;
        going = false;
        bootedAt = now;
        introduce();
    }

    boolean isGoing() {
        return going;
    }

    List<String> pins() {
        return List.copyOf(pins);
    }

    /** The next changes find no room, so many of them. */
    void lose(int changes) {
        losing = changes;
    }

    long nextBeat() {
        return nextBeat;
    }

    /** When the first sweep that began after this moment is over. */
    long sweepEndAfter(long moment) {
        return wentAt + ((moment - wentAt) / sweepMicros() + 1) * sweepMicros();
    }

    /** Says whether the board must be swept at once, for {@link #whole}. */
    boolean hear(String body, long now) {
        String[] fields = body.split(" ", -1);
        switch (fields[0]) {
            case "who" -> introduce();
            case "forget" -> {
                going = false;
                pins = new ArrayList<>();
                say.accept("ok forget");
            }
            case "add" -> add(fields);
            case "settle" -> settle(fields);
            case "stop" -> {
                going = false;
                say.accept("ok stop");
            }
            case "state" -> {
                return true;
            }
            case "go" -> {
                if (pins.isEmpty()) {
                    say.accept("no go empty");
                    return false;
                }
                going = true;
                wentAt = now;
                nextBeat = now + BEAT;
                sequence = 0;
                lost = 0;
                say.accept("ok go " + pins.size());
                return true;
            }
            default -> say.accept("no ? verb");
        }
        return false;
    }

    void hearGarbage(Received.Cause cause) {
        say.accept("no ? " + cause.code());
    }

    /** Says all that a sweep found: after {@code go}, when asked, and after a loss. */
    void whole(long now, Pairs swept) {
        closed = swept;
        swept.list().forEach(pair -> say.accept("= " + pair.low() + " " + pair.reads()));
        say.accept("full " + sequence + " " + micros(now) + " " + closed.count());
    }

    /** A later sweep: says what changed. */
    void swept(long now, Pairs swept) {
        for (Pair pair : closed.minus(swept).list()) {
            change('-', now, pair);
        }
        for (Pair pair : swept.minus(closed).list()) {
            change('+', now, pair);
        }
        closed = swept;
        if (lost > 0 && losing == 0) {
            say.accept("lost " + sequence + " " + lost);
            lost = 0;
            whole(now, swept);
        }
    }

    void beat() {
        say.accept("beat " + sequence + " " + micros(nextBeat) + " " + (nextBeat - wentAt) / sweepMicros() % MODULUS
                + " " + closed.count());
        nextBeat += BEAT;
    }

    private void change(char verb, long now, Pair pair) {
        sequence = (sequence + 1) % MODULUS;
        if (losing > 0) {
            losing--;
            lost++;
        } else {
            say.accept(verb + " " + sequence + " " + micros(now) + " " + pair.low() + " " + pair.reads());
        }
    }

    private void add(String[] fields) {
        for (int i = 1; i < fields.length; i++) {
            String pin = fields[i];
            if (!controller.pins().contains(pin) || controller.reserved(pin).isPresent()) {
                say.accept("no add pin " + pin);
                return;
            } else if (pins.contains(pin)) {
                say.accept("no add twice " + pin);
                return;
            } else if (pins.size() == MOST_PINS) {
                say.accept("no add many");
                return;
            }
            pins.add(pin);
        }
        say.accept("ok add " + pins.size());
    }

    private void settle(String[] fields) {
        boolean number = fields.length == 2 && fields[1].matches("[0-9]{1,5}");
        int asked = number ? Integer.parseInt(fields[1]) : 0;
        if (asked < 1 || asked > 10_000) {
            say.accept("no settle range");
        } else {
            settleMicros = asked;
            say.accept("ok settle " + asked);
        }
    }

    private void introduce() {
        say.accept("iam " + ProbeMessage.PROTOCOL + " simulated "
                + controller.name().replace(' ', '-') + " " + MOST_PINS + " 16000000");
    }

    private long micros(long now) {
        return (now - bootedAt) % MODULUS;
    }

    private long sweepMicros() {
        return Math.max(1, pins.size()) * (long) (settleMicros + READ_MICROS);
    }
}
