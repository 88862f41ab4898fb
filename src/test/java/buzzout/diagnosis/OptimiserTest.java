package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.FaultKind;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import buzzout.session.Evidence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * On boards too large to enumerate, the engine's explanation costs what a general-purpose optimiser's does.
 *
 * <p>Sat4j solves a weighted MaxSAT encoding, {@link Encoded}, that was written from the meaning of opens, dead keys,
 * reversed and bypassed diodes and held switches, without the circuit model. The engine gets priors that leave the other
 * kinds out. Both explanations are weighed by the definition.
 */
class OptimiserTest {
    static final Set<FaultKind> KINDS = Set.of(
            FaultKind.LINK_OPEN,
            FaultKind.JUMPER_OFF,
            FaultKind.LEAD_OFF,
            FaultKind.KEY_OPEN,
            FaultKind.DIODE_REVERSED,
            FaultKind.DIODE_BYPASSED,
            FaultKind.SWITCH_HELD);

    private static final double NEVER = 1e-30;

    @Test
    void the_explanation_costs_what_a_general_optimiser_finds() throws Exception {
        Priors priors = priors();
        List<Plan> plans = List.of(ExamplePlan.quayside(), Grids.branching5x12(), Grids.keys75());
        List<String> differences = new ArrayList<>();
        List<Double> ratios = new ArrayList<>();
        int boards = Campaign.size(27, 270);
        for (int board = 0; board < boards; board++) {
            Plan plan = plans.get(board % plans.size());
            Random random = new Random(board);
            int count = board % 9;
            List<Fault> truth = Encoded.apart(plan, Campaign.likelyFaults(random, plan, flattened(priors), count));
            Evidence evidence = SeededEvidence.of(
                    random, plan, truth, board % 2 == 0 ? SeededEvidence.Way.ALL_CALLED : SeededEvidence.Way.REPEATED);
            long start = System.nanoTime();
            Engine engine = new Engine(plan, priors);
            engine.weigh(evidence);
            long weighed = System.nanoTime();
            List<Fault> optimum = new Encoded(plan, priors, evidence).solve();
            long solved = System.nanoTime();
            ratios.add((double) (solved - weighed) / (weighed - start));
            double ours = PlainModel.score(plan, priors, evidence, engine.explanation());
            double theirs = PlainModel.score(plan, priors, evidence, optimum);
            if (Math.abs(ours - theirs) > 1e-4) {
                differences.add(String.format(
                        "seed %d on %s with %s: the engine has %s at %.4f, the optimiser %s at %.4f",
                        board,
                        plan.name(),
                        Campaign.codes(plan, truth),
                        Campaign.codes(plan, engine.explanation()),
                        ours,
                        Campaign.codes(plan, optimum),
                        theirs));
            }
        }
        double[] sorted =
                ratios.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf(
                "%d boards of 46 to 75 keys with up to 8 faults: %d explanations cost otherwise than Sat4j's; Sat4j took"
                        + " %.1f times as long as the engine (median; %.1f to %.1f)%n",
                boards, differences.size(), sorted[sorted.length / 2], sorted[0], sorted[sorted.length - 1]);
        assertTrue(Arrays.stream(sorted).allMatch(ratio -> ratio > 0));
        assertEquals(List.of(), differences, () -> String.join("\n", differences));
    }

    /** The judged priors of the kinds that are encoded; next to none of the others. */
    private static Priors priors() {
        Map<FaultKind, Double> table = new EnumMap<>(FaultKind.class);
        Priors.judged().of().forEach((kind, prior) -> table.put(kind, KINDS.contains(kind) ? prior : NEVER));
        return new Priors(table);
    }

    /** The kinds that are encoded, all as probable as each other, so that held switches come up too. */
    private static Priors flattened(Priors priors) {
        Map<FaultKind, Double> table = new EnumMap<>(FaultKind.class);
        priors.of().forEach((kind, prior) -> table.put(kind, KINDS.contains(kind) ? 0.003 : NEVER));
        return new Priors(table);
    }

    static List<Fault> encodable(Plan plan) {
        return Catalogue.of(plan).stream()
                .filter(fault -> KINDS.contains(fault.kind()))
                .toList();
    }
}
