package buzzout.probe;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.circuit.RiseTimes;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * A board with a probe that exists only here, and speaks the same bytes as the sketch. In simulated time a read does not
 * wait: it moves the time on to whatever happens next. Any thread may press, while one reads.
 */
public final class SimulatedBoard implements LinkSource {
    /** The port that it says it is on. */
    public static final String PORT = "simulated board";

    private static final long NEVER = Long.MAX_VALUE;
    /** How long a loose joint conducts, and how long it then does not. */
    private static final long LOOSE_MICROS = 700_000;

    private final Plan plan;
    private final Stopwatch time;
    private final Contacts contacts;
    private final SimulatedSketch sketch;
    private byte[] output = new byte[0];
    private Circuit circuit;
    private List<Fault> faults;
    private Optional<Joint> lead = Optional.empty();
    private boolean betweenReadsLow;
    private long rewiredAt = NEVER;
    private long sweptAt;
    private boolean plugged = true;
    private int opened;
    private boolean open;

    private SimulatedBoard(Plan plan, Collection<? extends Fault> faults, long seed, Stopwatch time) {
        this.plan = plan;
        this.time = time;
        contacts = new Contacts(seed);
        circuit = Circuit.of(plan, faults);
        this.faults = List.copyOf(faults);
        sketch = new SimulatedSketch(plan.controller(), this::riseNanos, this::say);
        sketch.boot(time.micros());
    }

    /** A board that lives in real time. */
    public static SimulatedBoard inRealTime(Plan plan, Collection<? extends Fault> faults, long seed) {
        return new SimulatedBoard(plan, faults, seed, Stopwatch.real());
    }

    /** A board whose time passes only while its link is read. */
    public static SimulatedBoard inSimulatedTime(Plan plan, Collection<? extends Fault> faults, long seed) {
        return new SimulatedBoard(plan, faults, seed, Stopwatch.simulated());
    }

    @Override
    public Stopwatch time() {
        return time;
    }

    @Override
    public synchronized Opened open() throws LinkDown {
        if (!plugged) {
            throw new LinkDown("The simulated board is unplugged.");
        }
        run();
        output = new byte[0];
        open = true;
        opened++;
        return new Opened(PORT, new BoardLink(opened));
    }

    /** Presses a key; its contact bounces first. */
    public void press(Key key) {
        move(key, true);
    }

    public void release(Key key) {
        move(key, false);
    }

    /** Holds the flying lead against a joint; where it was, it is no more. */
    public void touch(Joint joint) {
        hold(Optional.of(joint));
    }

    /** Takes the flying lead away. */
    public void lift() {
        hold(Optional.empty());
    }

    private synchronized void hold(Optional<Joint> joint) {
        run();
        lead = joint;
        rewiredAt = time.micros();
        notifyAll();
    }

    /** From now on this key bounces so long, in microseconds, each time that it moves. */
    public synchronized void bounce(Key key, long micros) {
        contacts.bounce(key.index(), micros);
    }

    /** The board has these faults from now on and no others. */
    public synchronized void setFaults(Collection<? extends Fault> faults) {
        run();
        circuit = Circuit.of(plan, faults);
        this.faults = List.copyOf(faults);
        rewiredAt = time.micros();
        notifyAll();
    }

    /** Whether levels between a sure low and a sure high read low; at first they read high. */
    public synchronized void readBetweenAsLow(boolean low) {
        run();
        betweenReadsLow = low;
        rewiredAt = time.micros();
        notifyAll();
    }

    /** Pulls the cable: the link goes down and none opens. */
    public synchronized void unplug() {
        run();
        plugged = false;
        open = false;
        notifyAll();
    }

    /** Plugs the cable in again; the probe starts anew. */
    public synchronized void replug() {
        plugged = true;
        sketch.boot(time.micros());
        notifyAll();
    }

    /** Presses the probe's reset button. */
    public synchronized void reset() {
        run();
        sketch.boot(time.micros());
        notifyAll();
    }

    /** Puts bytes on the wire that the sketch never sent. */
    public synchronized void noise(byte[] bytes) {
        run();
        put(bytes);
        notifyAll();
    }

    /** The next changes find no room in the probe, so many of them. */
    public synchronized void lose(int changes) {
        run();
        sketch.lose(changes);
    }

    /** Whether nobody has its port open. */
    public synchronized boolean isLeft() {
        return !open;
    }

    private synchronized void move(Key key, boolean down) {
        run();
        contacts.move(key.index(), down, time.micros());
        notifyAll();
    }

    private void say(String body) {
        put(Line.encode(body));
    }

    private long riseNanos(String pin) {
        int index = plan.pins().indexOf(pin);
        return index < 0
                ? RiseTimes.bareNanos(plan.controller())
                : RiseTimes.of(plan, faults, betweenReadsLow).nanos(index).orElse(Long.MAX_VALUE);
    }

    private void put(byte[] bytes) {
        if (open) {
            int length = output.length;
            output = Arrays.copyOf(output, length + bytes.length);
            System.arraycopy(bytes, 0, output, length, bytes.length);
        }
    }

    /** Lets happen what is due by now. */
    private void run() {
        long now = time.micros();
        for (long next = next(); next <= now; next = next()) {
            if (sketch.nextBeat() <= next) {
                sketch.beat();
            } else {
                sketch.swept(next, sweep(next));
            }
        }
    }

    /** When the next line is due, as far as anyone knows. */
    private long next() {
        if (!sketch.isGoing()) {
            return NEVER;
        }
        long moved = Math.min(Math.min(contacts.next(), rewiredAt), looseMovesAt());
        return Math.min(moved == NEVER ? NEVER : sketch.sweepEndAfter(moved), sketch.nextBeat());
    }

    /** When a loose joint comes or goes next, whatever the keys do. */
    private long looseMovesAt() {
        return circuit.isLoose() ? (sweptAt / LOOSE_MICROS + 1) * LOOSE_MICROS : NEVER;
    }

    /** What the sketch's pins read now, in the order in which they were listed. */
    private Pairs sweep(long now) {
        rewiredAt = NEVER;
        sweptAt = now;
        Circuit touched = lead.map(circuit::touching).orElse(circuit);
        Reading reading = touched.read(contacts.closedAt(now));
        boolean conducts = betweenReadsLow || (circuit.isLoose() && now / LOOSE_MICROS % 2 == 1);
        Pairs planned = conducts ? reading.low().plus(reading.between()) : reading.low();
        List<String> pins = plan.pins();
        List<Pair> listed = new ArrayList<>();
        for (Pair pair : planned.list()) {
            int low = sketch.pins().indexOf(pins.get(pair.low()));
            int reads = sketch.pins().indexOf(pins.get(pair.reads()));
            if (low >= 0 && reads >= 0) {
                listed.add(new Pair(low, reads));
            }
        }
        return Pairs.of(listed);
    }

    /** One opening of the board's port. */
    private final class BoardLink implements ByteLink {
        private final LineDecoder decoder = new LineDecoder();
        private final int number;

        BoardLink(int number) {
            this.number = number;
        }

        @Override
        public int read(byte[] into, int timeoutMillis) throws LinkDown {
            synchronized (SimulatedBoard.this) {
                long deadline = time.micros() + timeoutMillis * 1000L;
                while (true) {
                    check();
                    run();
                    long now = time.micros();
                    if (output.length > 0 || now >= deadline) {
                        return take(into);
                    }
                    pass(Math.max(Math.min(deadline, next()) - now, 1));
                }
            }
        }

        private void pass(long micros) throws LinkDown {
            try {
                time.waitOn(SimulatedBoard.this, micros);
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
                throw new LinkDown("The simulated board was left.");
            }
        }

        private int take(byte[] into) {
            int count = Math.min(into.length, output.length);
            System.arraycopy(output, 0, into, 0, count);
            output = Arrays.copyOfRange(output, count, output.length);
            return count;
        }

        @Override
        public void write(byte[] bytes) throws LinkDown {
            synchronized (SimulatedBoard.this) {
                check();
                run();
                for (Received line : decoder.take(bytes, bytes.length)) {
                    hear(line);
                }
                SimulatedBoard.this.notifyAll();
            }
        }

        private void hear(Received line) {
            if (line instanceof Received.Garbage garbage) {
                sketch.hearGarbage(garbage.cause());
            } else if (line instanceof Received.Good good && sketch.hear(good.body(), time.micros())) {
                sketch.whole(time.micros(), sweep(time.micros()));
            }
        }

        private void check() throws LinkDown {
            if (!open || number != opened) {
                throw new LinkDown("The simulated board was unplugged.");
            }
        }

        @Override
        public void close() {
            synchronized (SimulatedBoard.this) {
                open = open && number != opened;
            }
        }
    }
}
