package buzzout.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Circuit;
import buzzout.circuit.Fault;
import buzzout.circuit.FaultKind;
import buzzout.circuit.Pairs;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Joint;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** How many touches find the one open lead or link of a net, when nothing but touches is to be had. */
class TouchesTest {
    private static final Set<FaultKind> OPEN = Set.of(FaultKind.LEAD_OFF, FaultKind.LINK_OPEN, FaultKind.JUMPER_OFF);
    private static final Priors PRIORS = Priors.judged();

    /** A net's lead and links, each as probable as its prior says, and what a touch of each of its joints shows. */
    private static final class OpenNet {
        private final List<Fault> faults;
        private final double[] weights;
        private final List<Sequence.Test> touches = new ArrayList<>();

        OpenNet(Plan plan, int index) {
            Net net = plan.nets().get(index);
            faults = Stream.of(FaultKind.values())
                    .filter(OPEN::contains)
                    .flatMap(kind -> kind.all(plan).stream())
                    .filter(fault -> fault.nets(plan).equals(Set.of(index)))
                    .toList();
            weights = faults.stream()
                    .mapToDouble(fault -> PRIORS.of().getOrDefault(fault.kind(), Double.NaN))
                    .toArray();
            List<Circuit> circuits = faults.stream()
                    .map(fault -> Circuit.of(plan, List.of(fault)))
                    .toList();
            for (int key : net.joints()) {
                Joint joint = new Joint(key, net.kind());
                List<Pairs> met = circuits.stream()
                        .map(circuit -> circuit.touching(joint).quiet().low())
                        .toList();
                touches.add(new Sequence.Test(1, met.stream().map(met::indexOf).toList()));
            }
        }

        /** Touches as they are named, until one fault is left. */
        int toFind(int truth) {
            List<Integer> left = new ArrayList<>();
            faults.forEach(fault -> left.add(left.size()));
            int count = 0;
            while (left.size() > 1) {
                List<Sequence.Test> now = touches.stream()
                        .map(touch -> new Sequence.Test(
                                1, left.stream().map(touch.outcomes()::get).toList()))
                        .toList();
                Sequence sequence = new Sequence(
                        left.stream().mapToDouble(at -> weights[at]).toArray(), now, 1e6);
                Sequence.Test best = now.stream()
                        .min(Comparator.comparingDouble(sequence::effortWithFirst))
                        .orElseThrow();
                int shown = best.outcomes().get(left.indexOf(truth));
                List<Integer> still = new ArrayList<>();
                for (int at = 0; at < left.size(); at++) {
                    if (best.outcomes().get(at) == shown) {
                        still.add(left.get(at));
                    }
                }
                left.retainAll(still);
                count++;
            }
            return count;
        }

        double touched() {
            double sum = 0;
            for (int truth = 0; truth < weights.length; truth++) {
                sum += weights[truth] * toFind(truth);
            }
            return sum;
        }

        double total() {
            return java.util.Arrays.stream(weights).sum();
        }
    }

    @Test
    void over_all_links_of_quayside_46_the_mean_number_of_touches_is_the_optimum() {
        Plan plan = ExamplePlan.quayside();
        double touched = 0;
        double optimum = 0;
        double halving = 0;
        double bound = 0;
        double total = 0;
        int links = 0;
        for (int net = 0; net < plan.nets().size(); net++) {
            OpenNet open = new OpenNet(plan, net);
            double[] inOrder = inOrder(plan, net, open);
            touched += open.touched();
            optimum += AlphabeticTable.cost(inOrder);
            halving += AlphabeticTable.halving(inOrder);
            bound += AlphabeticTable.entropy(inOrder) * open.total();
            total += open.total();
            links += inOrder.length;
        }
        System.out.printf(
                "Quayside 46, %d leads, links and jumpers: %.4f touches on average; optimum by the table %.4f, halving"
                        + " by count %.4f, entropy bound %.4f%n",
                links, touched / total, optimum / total, halving / total, bound / total);
        assertEquals(optimum / total, touched / total, 1e-9);
        assertTrue(bound <= touched && touched <= halving + 1e-9);
    }

    /** The weights from the lead along the chain; the leads of Quayside 46 sit on the first joints. */
    private static double[] inOrder(Plan plan, int index, OpenNet open) {
        Net net = plan.nets().get(index);
        assertEquals(0, net.leadJoint());
        double lead = PRIORS.of().getOrDefault(FaultKind.LEAD_OFF, Double.NaN);
        double[] weights = Stream.concat(
                        Stream.of(lead),
                        net.links().stream()
                                .map(link -> PRIORS.of()
                                        .getOrDefault(
                                                link.jumper() ? FaultKind.JUMPER_OFF : FaultKind.LINK_OPEN,
                                                Double.NaN)))
                .mapToDouble(Double::doubleValue)
                .toArray();
        assertEquals(open.weights.length, weights.length);
        return weights;
    }

    /** A net that branches, or whose lead sits in its middle, is no chain: the search of all sequences decides. */
    @Test
    void on_branching_nets_every_link_is_found_and_hardly_above_the_bound() {
        Plan plan = Grids.branching5x12();
        for (String name : List.of("R3", "R5", "C5", "C8")) {
            OpenNet open = new OpenNet(plan, plan.indexOf(plan.net(name).orElseThrow()));
            double mean = open.touched() / open.total();
            double bound = AlphabeticTable.entropy(open.weights);
            System.out.printf(
                    "%s of the branching board, %d leads and links: %.3f touches, entropy bound %.3f%n",
                    name, open.weights.length, mean, bound);
            assertTrue(mean >= bound - 1e-9 && mean < bound + 1, () -> name + ": " + mean + " against " + bound);
        }
    }
}
