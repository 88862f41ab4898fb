package buzzout.probe;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Controller;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;

/** What the probe sketch does, without a microcontroller: commands and sweeps in, bodies of lines out. */
final class SimulatedSketch {
    private static final Set<String> ONE_FIELD = Set.of("forget", "go", "stop", "state");
    private static final Set<String> TWO_FIELDS = Set.of("who", "settle", "rise");

    /** An echo gets no answer, lest the two go on for ever. */
    private static final Set<String> ONLY_A_PROBE_SAYS =
            Set.of("iam", "ok", "no", "+", "-", "=", "full", "beat", "lost");

    private static final int DEFAULT_SETTLE = 10;
    private static final int LONGEST_SETTLE = 1000;
    private static final int LEAST_MEASURED_SETTLE = 5;
    /** What rises later does not rise. */
    private static final long LONGEST_RISE_NANOS = 500_000;

    private static final long BEAT = 250_000;
    private static final int READ_MICROS = 6;
    private static final long WRAP = 1L << 32;

    private final String chip;
    private final List<String> offered = new ArrayList<>();
    private final Consumer<String> say;
    private final ToLongFunction<String> riseNanos;
    private List<String> pins = List.of();
    private int settleMicros = DEFAULT_SETTLE;
    private boolean going;
    private Pairs closed = Pairs.NONE;
    private long bootedAt;
    private long wentAt;
    private long nextBeat;
    private long sequence;
    private long losing;
    private long lost;

    /**
     * @param riseNanos how long a pin by its name takes to rise, {@link Long#MAX_VALUE} where it never does
     */
    SimulatedSketch(Controller controller, ToLongFunction<String> riseNanos, Consumer<String> say) {
        chip = controller.name().replace(' ', '-');
        for (String pin : controller.pins()) {
            if (controller.reserved(pin).isEmpty()) {
                offered.add(pin);
            }
        }
        this.say = say;
        this.riseNanos = riseNanos;
    }

    /** Power comes, or a reset: nothing is remembered. */
    void boot(long now) {
        pins = List.of();
        settleMicros = DEFAULT_SETTLE;
        going = false;
        bootedAt = now;
        introduce();
    }

    boolean isGoing() {
        return going;
    }

    List<String> pins() {
        return pins;
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
        List<String> fields = List.of(body.split(" ", -1));
        String verb = fields.get(0);
        if ((ONE_FIELD.contains(verb) && fields.size() != 1)
                || (TWO_FIELDS.contains(verb) && fields.size() != 2)
                || (verb.equals("add") && fields.size() < 2)) {
            say.accept("no " + verb + " fields");
            return false;
        }
        switch (verb) {
            case "who" -> {
                if (isCount(fields.get(1), 9)) {
                    introduce();
                } else {
                    say.accept("no who version");
                }
            }
            case "forget" -> {
                going = false;
                pins = List.of();
                say.accept("ok forget");
            }
            case "add" -> add(fields.subList(1, fields.size()));
            case "settle" -> settle(fields.get(1));
            case "rise" -> rise(fields.get(1));
            case "stop" -> {
                going = false;
                say.accept("ok stop");
            }
            case "go" -> {
                return go(now);
            }
            case "state" -> {
                if (going) {
                    whole(now, closed);
                } else {
                    say.accept("no state stopped");
                }
            }
            default -> {
                if (!ONLY_A_PROBE_SAYS.contains(verb)) {
                    say.accept("no ? verb");
                }
            }
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
        say.accept("beat " + sequence + " " + micros(nextBeat) + " " + (nextBeat - wentAt) / sweepMicros() % WRAP + " "
                + closed.count());
        nextBeat += BEAT;
    }

    private void change(char verb, long now, Pair pair) {
        sequence = (sequence + 1) % WRAP;
        if (losing > 0) {
            losing--;
            lost++;
        } else {
            say.accept(verb + " " + sequence + " " + micros(now) + " " + pair.low() + " " + pair.reads());
        }
    }

    private boolean go(long now) {
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

    /** All of them or none. */
    private void add(List<String> names) {
        List<String> longer = new ArrayList<>(pins);
        for (String pin : names) {
            String refusal = refusal(pin, longer);
            if (going || !refusal.isEmpty()) {
                say.accept("no add " + (going ? "sweeping" : refusal));
                return;
            }
            longer.add(pin);
        }
        pins = List.copyOf(longer);
        say.accept("ok add " + pins.size());
    }

    private String refusal(String pin, List<String> listed) {
        if (!offered.contains(pin)) {
            return "pin " + pin;
        }
        if (listed.contains(pin)) {
            return "twice " + pin;
        }
        return listed.size() == mostPins() ? "many" : "";
    }

    private void rise(String index) {
        if (!(index.equals("0") || isCount(index, 3)) || Integer.parseInt(index) >= pins.size()) {
            say.accept("no rise index");
            return;
        }
        long nanos = riseNanos.applyAsLong(pins.get(Integer.parseInt(index)));
        say.accept(nanos > LONGEST_RISE_NANOS ? "no rise low " + index : "ok rise " + index + " " + nanos);
    }

    private void settleAsMeasured() {
        if (pins.isEmpty()) {
            say.accept("no settle empty");
            return;
        }
        long slowest = pins.stream()
                .mapToLong(riseNanos)
                .filter(nanos -> nanos <= LONGEST_RISE_NANOS)
                .max()
                .orElse(0);
        settleMicros = (int) Math.max(LEAST_MEASURED_SETTLE, (2 * slowest + 999) / 1000);
        say.accept("ok settle " + settleMicros);
    }

    private void settle(String asked) {
        if (asked.equals("auto")) {
            settleAsMeasured();
        } else if (isCount(asked, 4) && Integer.parseInt(asked) <= LONGEST_SETTLE) {
            settleMicros = Integer.parseInt(asked);
            say.accept("ok settle " + asked);
        } else {
            say.accept("no settle range");
        }
    }

    /** A whole number above 0 of no more digits than that. */
    private static boolean isCount(String text, int mostDigits) {
        for (int at = 0; at < text.length(); at++) {
            if (text.charAt(at) < '0' || text.charAt(at) > '9') {
                return false;
            }
        }
        return !text.isEmpty() && text.charAt(0) != '0' && text.length() <= mostDigits;
    }

    private void introduce() {
        say.accept("iam " + ProbeMessage.PROTOCOL + " simulated " + chip + " " + mostPins() + " 16000000");
    }

    /** A sweep's result keeps one 64-bit word a pin. */
    private int mostPins() {
        return Math.min(offered.size(), Long.SIZE);
    }

    private long micros(long now) {
        return (now - bootedAt) % WRAP;
    }

    private long sweepMicros() {
        return Math.max(1, pins.size()) * (long) (settleMicros + READ_MICROS);
    }
}
