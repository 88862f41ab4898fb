package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import buzzout.session.Observation.Hands;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Steps from the end of a roll call until every finding is sure, on seeded boards: those that the program names, all in
 * random order, and all in the plan's order.
 */
class NextStepsTest {
    private static final Plan PLAN = ExamplePlan.quayside();
    private static final double SURE = 0.95;
    private static final int MOST_STEPS = 150;

    /** What a way of choosing took. */
    private static final class Tally {
        private final String way;
        private int boards;
        private int certain;
        private int presses;
        private int touches;
        private int rightFindings;
        private int findings;

        Tally(String way) {
            this.way = way;
        }

        double effort() {
            return (presses * Labour.PRESS + touches * Labour.TOUCH) / boards;
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%-38s %5.2f presses, %6.2f touches, effort %6.2f; all certain on %d of %d boards; %d of %d sure"
                            + " findings right",
                    way,
                    1.0 * presses / boards,
                    1.0 * touches / boards,
                    effort(),
                    certain,
                    boards,
                    rightFindings,
                    findings);
        }
    }

    private interface Choice {
        /** The next step, or null when there is none. */
        @org.jspecify.annotations.Nullable
        Step next(Diagnosis diagnosis, List<Step> done);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void the_named_steps_take_less_than_others(int faults) {
        int boards = Campaign.size(12, 150);
        Tally named = new Tally("as named");
        Tally random = new Tally("presses and touches in random order");
        Tally exhaustive = new Tally("every key again, then every joint");
        for (int board = 0; board < boards; board++) {
            long seed = 1000L * faults + board;
            List<Fault> truth = Campaign.likelyFaults(new Random(seed), PLAN, Priors.judged(), faults);
            run(
                    named,
                    truth,
                    (diagnosis, done) -> diagnosis.next().stream()
                            .map(NextStep::step)
                            .filter(step -> !done.contains(step))
                            .findFirst()
                            .orElse(null));
            Random choice = new Random(seed);
            List<Step> all = all();
            Collections.shuffle(all, choice);
            run(random, truth, (diagnosis, done) -> {
                List<Step> open = new ArrayList<>(all);
                open.removeAll(done);
                return open.isEmpty() ? null : open.get(0);
            });
            List<Step> inOrder = all();
            run(exhaustive, truth, (diagnosis, done) -> done.size() < inOrder.size() ? inOrder.get(done.size()) : null);
        }
        System.out.printf("%d boards with %d faults (seeds %d n + board), after a roll call:%n", boards, faults, 1000);
        List.of(named, random, exhaustive).forEach(tally -> System.out.println("  " + tally));
        assertTrue(named.effort() < random.effort() / 2, () -> named + "\n" + random);
        assertTrue(named.effort() < exhaustive.effort() / 2, () -> named + "\n" + exhaustive);
    }

    private static List<Step> all() {
        List<Step> all = new ArrayList<>();
        PLAN.keys().stream().map(Key::index).map(Step.Press::new).forEach(all::add);
        for (Net net : PLAN.nets()) {
            net.joints().forEach(key -> all.add(new Step.Touch(new Joint(key, net.kind()))));
        }
        return all;
    }

    private static void run(Tally tally, List<Fault> truth, Choice choice) {
        Circuit circuit = Circuit.of(PLAN, truth);
        Pairs quiet = circuit.quiet().low();
        List<Observation> seen = new ArrayList<>(RollCall.complete(PLAN, truth).observations());
        Engine engine = new Engine(PLAN);
        Diagnosis diagnosis = engine.weigh(new Evidence(seen));
        List<Step> done = new ArrayList<>();
        tally.boards++;
        while (!isCertain(diagnosis) && done.size() < MOST_STEPS) {
            Step step = choice.next(diagnosis, done);
            if (step instanceof Step.Press press) {
                tally.presses++;
                Pairs answer = circuit.pressed(PLAN.keys().get(press.key())).low();
                seen.add(new Observation(new Hands.Meant(press.key()), quiet.plus(answer)));
            } else if (step instanceof Step.Touch touch) {
                tally.touches++;
                Pairs met = circuit.touching(touch.joint()).quiet().low();
                seen.add(new Observation(
                        new Hands.Touch(touch.joint().net(PLAN), touch.joint().place(PLAN)), quiet.plus(met)));
            } else {
                break; // Only a meter helps.
            }
            done.add(step);
            diagnosis = engine.weigh(new Evidence(seen));
        }
        tally.certain += isCertain(diagnosis) ? 1 : 0;
        for (Finding finding : diagnosis.findings()) {
            if (finding.probability() >= SURE) {
                tally.findings++;
                tally.rightFindings +=
                        finding.suspects().stream().anyMatch(suspect -> truth.contains(suspect.fault())) ? 1 : 0;
            }
        }
    }

    /** Nothing that a press or a touch could still tell apart. */
    private static boolean isCertain(Diagnosis diagnosis) {
        return diagnosis.findings().stream().allMatch(finding -> finding.first().probability() >= SURE)
                || diagnosis.next().stream().allMatch(next -> next.step() instanceof Step.Measure);
    }
}
