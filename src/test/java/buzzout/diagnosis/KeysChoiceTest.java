package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Fault;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeysChoiceTest {
    private static final Priors PRIORS = Priors.judged();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void what_keys_choose_weighs_what_the_same_faults_weigh_by_the_definition(long seed) {
        Random random = new Random(seed);
        for (int board = 0; board < 40; board++) {
            Plan plan = board % 2 == 0 ? ExamplePlan.quayside() : Grids.branching5x12();
            List<Fault> faults = Campaign.likelyFaults(random, plan, PRIORS, 5);
            Case evidence = new Case(plan, PRIORS);
            evidence.take(board % 4 < 2 ? RollCall.complete(plan, faults) : RollCall.freePlay(plan, faults));
            KeysChoice choice = new KeysChoice(evidence);
            BitSet nets = ofNets(evidence.charges(), Campaign.anyFaults(random, plan, 3));
            BitSet charged = choice.charged(nets);
            assertEquals(
                    evidence.weigh(charged).score(),
                    choice.score(nets),
                    1e-6,
                    () -> "seed " + seed + ": "
                            + Campaign.codes(plan, evidence.charges().faults(charged)));
        }
    }

    /** In a roll call no key's answer says anything of another's. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void in_a_roll_call_no_single_fault_in_a_key_would_explain_better(long seed) {
        Random random = new Random(seed);
        Plan plan = ExamplePlan.quayside();
        for (int board = 0; board < 10; board++) {
            List<Fault> faults = Campaign.likelyFaults(random, plan, PRIORS, 5);
            Case evidence = new Case(plan, PRIORS);
            evidence.take(RollCall.complete(plan, faults));
            Charges charges = evidence.charges();
            KeysChoice choice = new KeysChoice(evidence);
            BitSet nets = ofNets(charges, faults);
            Hypothesis chosen = evidence.weigh(choice.charged(nets));
            for (int fault = 0; fault < charges.count(); fault++) {
                if (charges.inOneKey(fault)
                        && !charges.held().get(fault)
                        && !charges.loose().get(fault)
                        && charges.canJoin(chosen.charged(), fault)) {
                    double more = evidence.with(chosen, fault).score();
                    int tried = fault;
                    assertTrue(
                            more <= chosen.score() + 1e-9,
                            () -> "seed " + seed + ": " + charges.fault(tried).code(plan) + " beside "
                                    + Campaign.codes(plan, charges.faults(chosen.charged())));
                }
            }
        }
    }

    private static BitSet ofNets(Charges charges, List<Fault> faults) {
        BitSet nets = new BitSet();
        IntStream.range(0, charges.count())
                .filter(number -> faults.contains(charges.fault(number)))
                .forEach(nets::set);
        BitSet wanted = charges.lastingOfNets();
        wanted.or(charges.held());
        nets.and(wanted);
        return nets;
    }
}
