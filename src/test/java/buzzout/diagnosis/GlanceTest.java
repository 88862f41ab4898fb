package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import buzzout.session.Observation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GlanceTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    /** How often a glance may ask whether its time is over before it is. */
    @ParameterizedTest
    @ValueSource(ints = {0, 3, 10, Integer.MAX_VALUE})
    void glances_after_each_press_and_a_thorough_look_at_the_end_find_no_less_than_one_thorough_look(int budget) {
        for (long seed = 1; seed <= Campaign.size(6, 60); seed++) {
            String run = "seed " + seed;
            List<Observation> observations = pressed(seed, 3);
            Engine live = new Engine(PLAN);
            for (int seen = 1; seen <= observations.size(); seen++) {
                AtomicInteger left = new AtomicInteger(budget);
                live.glance(new Evidence(observations.subList(0, seen)), () -> left.getAndDecrement() <= 0);
            }
            Evidence all = new Evidence(observations);
            Diagnosis pondered = live.ponder(all, () -> false).orElseThrow();

            Engine afresh = new Engine(PLAN);
            Diagnosis weighed = afresh.weigh(all);
            assertEquals(score(all, afresh), score(all, live), 1e-9, run);
            assertEquals(suspects(weighed), suspects(pondered), run);
            assertEquals(next(weighed), next(pondered), run);
        }
    }

    @Test
    void an_open_link_is_found_behind_two_keys_that_were_found_dead_one_after_the_other() {
        Evidence all = RollCall.complete(
                PLAN, List.of(Catalogue.find(PLAN, "open:C7:H:N").orElseThrow()));
        Engine live = new Engine(PLAN);
        for (int seen = 1; seen <= all.observations().size(); seen++) {
            Evidence evidence = new Evidence(all.observations().subList(0, seen));
            live.glance(evidence, () -> false);
            live.ponder(evidence, () -> false);
        }
        assertEquals(
                List.of("open:C7:H:N"),
                live.explanation().stream().map(fault -> fault.code(PLAN)).toList());
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void a_glance_that_leaves_something_out_says_that_it_is_rough(long seed) {
        Engine live = new Engine(PLAN);
        List<Observation> observations = pressed(seed, 3);
        for (int seen = 1; seen <= observations.size(); seen++) {
            Evidence evidence = new Evidence(observations.subList(0, seen));
            Diagnosis glanced = live.glance(evidence);
            if (!live.isRough()) {
                Diagnosis pondered = live.ponder(evidence, () -> false).orElseThrow();
                assertEquals(pondered, glanced, () -> "seed " + seed);
            }
        }
        live.ponder(new Evidence(observations), () -> false);
        assertTrue(!live.isRough(), "nothing is left to look for after a thorough look");
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22})
    void a_thorough_look_that_is_overdue_is_given_up_and_owed(long seed) {
        Engine live = new Engine(PLAN);
        Evidence all = new Evidence(pressed(seed, 3));
        assertEquals(Optional.empty(), live.ponder(all, () -> true));
        assertTrue(live.isRough());
        assertEquals(
                suspects(new Engine(PLAN).weigh(all)),
                suspects(live.ponder(all, () -> false).orElseThrow()));
    }

    @Test
    void a_search_among_contradictions_ends_and_says_that_it_was_cut_short() {
        List<Observation> observations = pressed(31, 8);
        Diagnosis impatient = new Engine(PLAN, Priors.judged(), 100).weigh(new Evidence(observations));
        assertTrue(impatient.troubles().get(0).contains("was cut short"), () -> "" + impatient.troubles());
        assertTrue(!impatient.findings().isEmpty(), "something is found all the same");

        Diagnosis patient = new Engine(PLAN).weigh(new Evidence(observations));
        assertTrue(
                patient.troubles().stream().noneMatch(trouble -> trouble.contains("cut short")),
                () -> "" + patient.troubles());
    }

    private static List<Observation> pressed(long seed, int faults) {
        Random random = new Random(seed);
        List<Fault> truth = Campaign.likelyFaults(random, PLAN, Priors.judged(), faults);
        List<Observation> observations =
                new ArrayList<>(RollCall.complete(PLAN, truth).observations());
        Collections.shuffle(observations.subList(1, observations.size()), random);
        return observations;
    }

    private static double score(Evidence evidence, Engine engine) {
        return PlainModel.score(PLAN, Priors.judged(), evidence, engine.explanation());
    }

    private static List<List<String>> suspects(Diagnosis diagnosis) {
        return diagnosis.findings().stream()
                .map(finding -> finding.suspects().stream()
                        .map(suspect -> suspect.fault().code(PLAN))
                        .toList())
                .sorted(Comparator.comparing(List::toString))
                .toList();
    }

    private static List<String> next(Diagnosis diagnosis) {
        return diagnosis.next().stream().map(NextStep::says).limit(1).toList();
    }
}
