package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Circuit;
import buzzout.circuit.DiodeBypassed;
import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The combinations that prove a board in company, held against the circuit model. */
class CombinationsTest {
    private static final Plan PLAN = ExamplePlan.quayside();
    private static final Circuit SOUND = Circuit.of(PLAN);
    private static final Set<Integer> ALL = PLAN.keys().stream().map(Key::index).collect(Collectors.toSet());
    private static final List<Set<Integer>> COMBINATIONS = Combinations.proving(PLAN, ALL);

    private static Pairs held(Circuit circuit, Set<Integer> keys) {
        BitSet held = new BitSet();
        keys.forEach(held::set);
        return circuit.read(held).low();
    }

    /** Of 46 keys four at a time, fewer than 12 cannot hold each key once. */
    @Test
    void twelve_of_at_most_four_keys_prove_quayside_46() {
        assertEquals(12, COMBINATIONS.size(), COMBINATIONS::toString);
        COMBINATIONS.forEach(keys -> assertTrue(keys.size() <= 4, keys::toString));
    }

    @Test
    void every_bypassed_diode_shows_a_pair_that_none_of_the_keys_closes_alone() {
        for (Key key : PLAN.keys()) {
            Circuit bypassed = Circuit.of(PLAN, List.of(new DiodeBypassed(key.index())));
            assertTrue(
                    COMBINATIONS.stream().anyMatch(keys -> {
                        Pairs alone = keys.stream()
                                .map(each ->
                                        bypassed.pressed(PLAN.keys().get(each)).low())
                                .reduce(Pairs.NONE, Pairs::plus);
                        return !held(bypassed, keys).minus(alone).isEmpty()
                                && !held(bypassed, keys).equals(held(SOUND, keys));
                    }),
                    key::name);
        }
    }

    @Test
    void a_board_without_faults_answers_each_with_its_keys_pairs_and_no_more() {
        for (Set<Integer> keys : COMBINATIONS) {
            assertEquals(
                    Pairs.of(keys.stream()
                            .map(each -> Expected.pair(PLAN, PLAN.keys().get(each)))
                            .toList()),
                    AllAtOnce.computed(PLAN, keys));
        }
    }

    /** Sweeping both ways, single presses and the quiet check see every fault that the model knows. */
    @Test
    void no_single_fault_shows_in_company_only() {
        for (Fault fault : Catalogue.of(PLAN)) {
            Circuit faulty = Circuit.of(PLAN, List.of(fault));
            boolean seenAlone = !faulty.quiet().equals(SOUND.quiet())
                    || PLAN.keys().stream().anyMatch(key -> !faulty.pressed(key).equals(SOUND.pressed(key)));
            assertTrue(seenAlone, () -> fault.code(PLAN));
        }
    }

    @Test
    void only_keys_that_answer_are_held() {
        Set<Integer> usable =
                Set.copyOf(ALL.stream().filter(key -> key % 3 != 0).collect(Collectors.toSet()));
        List<Set<Integer>> combinations = Combinations.proving(PLAN, usable);
        assertEquals(usable, combinations.stream().flatMap(Set::stream).collect(Collectors.toSet()));
        assertEquals(List.of(), Combinations.proving(PLAN, Set.of(5)));
        assertEquals(combinations, Combinations.proving(PLAN, usable), "the same each time");
    }
}
