package buzzout.diagnosis;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Layout;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** Evidence from a faulty board in the hands of all sorts of people; a doubtful level reads either way. */
final class SeededEvidence {
    /** How the person goes about it. */
    enum Way {
        QUIET_ONLY,
        SOME_CALLED,
        ALL_CALLED,
        WITHOUT_QUIET,
        REPEATED,
        MISPRESSED,
        SILENT,
        FREE,
        FREE_TO_THE_END,
        FREE_AND_CALLED,
        TOUCHED,
        TOGETHER,
        FLEXED
    }

    private final Random random;
    private final Plan plan;
    private final Layout layout;
    private final Collection<? extends Fault> faults;
    private final Circuit circuit;
    private final Reading quietReading;
    private final Pairs quiet;
    private final List<Key> keys;
    private final List<Observation> observations = new ArrayList<>();

    private SeededEvidence(Random random, Plan plan, Collection<? extends Fault> faults) {
        this.random = random;
        this.plan = plan;
        this.faults = faults;
        layout = new Layout(plan);
        circuit = Circuit.of(plan, faults);
        quietReading = circuit.quiet();
        quiet = seen(quietReading);
        keys = new ArrayList<>(plan.keys());
        Collections.shuffle(keys, random);
    }

    static Evidence of(Random random, Plan plan, Collection<? extends Fault> faults, Way way) {
        SeededEvidence sitting = new SeededEvidence(random, plan, faults);
        sitting.go(way);
        return new Evidence(sitting.observations);
    }

    private void go(Way way) {
        if (way != Way.WITHOUT_QUIET) {
            observations.add(new Observation(new Hands.Off(), quiet));
        }
        int some = 1 + random.nextInt(keys.size());
        switch (way) {
            case QUIET_ONLY -> {}
            case SOME_CALLED, WITHOUT_QUIET -> keys.subList(0, some).forEach(key -> call(key, key));
            case ALL_CALLED -> keys.forEach(key -> call(key, key));
            case REPEATED -> {
                keys.forEach(key -> call(key, key));
                keys.subList(0, some).forEach(key -> call(key, key));
            }
            case MISPRESSED ->
                keys.forEach(key -> call(key, random.nextInt(4) == 0 ? keys.get(random.nextInt(keys.size())) : key));
            case SILENT ->
                keys.forEach(key -> {
                    if (random.nextInt(3) == 0) {
                        observe(new Hands.Meant(key.index()), Pairs.NONE);
                    } else {
                        call(key, key);
                    }
                });
            case FREE -> {
                for (int press = 0; press < some; press++) {
                    playFreely(keys.get(random.nextInt(keys.size())));
                }
            }
            case FREE_TO_THE_END -> {
                keys.subList(0, random.nextInt(3) == 0 ? some : keys.size()).forEach(this::playFreely);
                observe(new Hands.EveryKey(), Pairs.NONE);
            }
            case TOUCHED -> {
                keys.subList(0, some).forEach(key -> call(key, key));
                touch();
                touch();
            }
            case TOGETHER -> {
                keys.subList(0, some).forEach(key -> call(key, key));
                holdTogether();
            }
            case FLEXED -> {
                keys.subList(0, some).forEach(key -> call(key, key));
                for (int time = 0; time < 4; time++) {
                    keys.subList(0, some).forEach(this::flex);
                }
            }
            case FREE_AND_CALLED -> {
                keys.subList(0, some).forEach(key -> call(key, key));
                keys.subList(some / 2, keys.size()).forEach(this::playFreely);
                if (random.nextBoolean()) {
                    observe(new Hands.EveryKey(), Pairs.NONE);
                }
            }
        }
    }

    private void call(Key key, Key pressed) {
        observe(new Hands.Meant(key.index()), seen(circuit.pressed(pressed)));
    }

    private void touch() {
        int net = random.nextInt(plan.nets().size());
        int joint = random.nextInt(plan.nets().get(net).joints().size());
        observe(
                new Hands.Touch(net, joint),
                seen(Circuit.touched(layout, faults, net, joint).quiet()));
    }

    private void holdTogether() {
        Set<Integer> together = new TreeSet<>();
        BitSet held = new BitSet();
        for (Key key : keys.subList(0, Math.min(3, keys.size()))) {
            together.add(key.index());
            held.set(key.index());
        }
        observe(new Hands.Together(together), seen(circuit.read(held)));
    }

    private void flex(Key key) {
        Pairs seen = random.nextInt(30) == 0 ? Pairs.NONE : seen(circuit.pressed(key));
        observe(new Hands.Flexed(key.index()), seen);
    }

    private void playFreely(Key key) {
        Pairs seen = seen(circuit.pressed(key));
        if (!seen.minus(quiet).isEmpty()) {
            observe(new Hands.SomeKey(), seen);
        }
    }

    private void observe(Hands hands, Pairs seen) {
        observations.add(new Observation(hands, quiet.plus(seen)));
    }

    private Pairs seen(Reading reading) {
        Pairs seen = reading.low();
        for (Pair pair : reading.between().list()) {
            seen = random.nextBoolean() ? seen.with(pair) : seen;
        }
        return seen;
    }
}
