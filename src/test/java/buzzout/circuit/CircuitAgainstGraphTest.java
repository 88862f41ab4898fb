package buzzout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.jgrapht.Graph;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.DirectedWeightedMultigraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The circuit's own walk over lumps and branches agrees with JGraphT's shortest paths over the netlist, part by part,
 * where each diode weighs one and everything else nothing.
 */
class CircuitAgainstGraphTest {
    private static final String GROUND = "ground";

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void what_reads_low_is_what_reaches_a_driven_pin_through_few_enough_diodes(long seed) {
        Random random = new Random(seed);
        int lows = 0;
        int betweens = 0;
        for (int board = 0; board < 150; board++) {
            int sureDiodes = random.nextInt(4);
            Plan plan = RandomBoards.plan(random, sureDiodes);
            List<Fault> faults = RandomBoards.faults(random, plan, 4);
            BitSet held = RandomBoards.held(random, plan, 5);
            Reading expected = expected(plan, faults, held, sureDiodes, Optional.empty());
            Reading read = Circuit.of(plan, faults).read(held);
            int which = board;
            assertEquals(
                    expected,
                    read,
                    () -> "seed " + seed + ", board " + which + ", " + sureDiodes + " sure diodes, faults " + faults
                            + ", held " + held + "\n" + Netlist.text(plan, faults));
            lows += read.low().count();
            betweens += read.between().count();
        }
        int lowPairs = lows;
        int betweenPairs = betweens;
        assertTrue(
                lowPairs > 300 && betweenPairs > 100,
                () -> "seed " + seed + " hardly tries anything: " + lowPairs + " lows, " + betweenPairs + " between");
    }

    /** The short way that most questions take, against the walk that the tests above hold against the graph. */
    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void what_one_key_adds_is_what_reads_otherwise_than_in_the_quiet_sweep(long seed) {
        Random random = new Random(seed);
        int asked = 0;
        for (int board = 0; board < 200; board++) {
            Plan plan = RandomBoards.plan(random, random.nextInt(3));
            List<Fault> faults = RandomBoards.faults(random, plan, 4);
            Circuit circuit = Circuit.of(plan, faults);
            for (Key key : plan.keys()) {
                assertEquals(
                        walked(circuit, key),
                        circuit.added(key, circuit.quiet()),
                        () -> "seed " + seed + ", " + key.name() + ", faults " + faults + "\n"
                                + Netlist.text(plan, faults));
                asked++;
            }
        }
        int questions = asked;
        assertTrue(questions > 1000, () -> "seed " + seed + " hardly tries anything: " + questions + " keys");
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34})
    void a_key_with_a_fault_adds_the_same_whether_the_whole_board_or_only_the_key_is_soldered_anew(long seed) {
        Random random = new Random(seed);
        int asked = 0;
        for (int board = 0; board < 200; board++) {
            Plan plan = RandomBoards.plan(random, random.nextInt(3));
            List<Fault> faults = RandomBoards.faults(random, plan, 4).stream()
                    .filter(fault -> fault.onlyKey().isEmpty() || fault.kind() == FaultKind.SWITCH_HELD)
                    .toList();
            Circuit circuit = Circuit.of(plan, faults);
            for (Fault inKey : Catalogue.of(plan)) {
                if (inKey.onlyKey().isEmpty() || inKey.kind() == FaultKind.SWITCH_HELD || circuit.isLoose()) {
                    continue;
                }
                Key key = plan.keys().get(inKey.onlyKey().getAsInt());
                Optional<Reading> added =
                        circuit.addedIfSoldered(key, Circuit.of(plan, List.of(inKey)), circuit.quiet());
                List<Fault> both = new ArrayList<>(faults);
                both.add(inKey);
                if (added.isPresent()) {
                    assertEquals(walked(Circuit.of(plan, both), key), added.get(), () -> "seed " + seed + ", " + both);
                    asked++;
                }
            }
        }
        int questions = asked;
        assertTrue(questions > 1000, () -> "seed " + seed + " hardly tries anything: " + questions + " faults");
    }

    private static Reading walked(Circuit circuit, Key key) {
        Reading quiet = circuit.quiet();
        Reading pressed = circuit.pressed(key);
        return new Reading(
                pressed.low().minus(quiet.low()),
                pressed.between().minus(quiet.between()).minus(quiet.low()));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void while_the_flying_lead_touches_a_joint_its_pin_hangs_on_that_joint(long seed) {
        Random random = new Random(seed);
        int both = 0;
        int oneWay = 0;
        int nothing = 0;
        for (int board = 0; board < 200; board++) {
            int sureDiodes = random.nextInt(4);
            Plan plan = RandomBoards.plan(random, sureDiodes);
            List<Fault> faults = new ArrayList<>(RandomBoards.faults(random, plan, 5));
            BitSet held = RandomBoards.held(random, plan, 3);
            Joint joint = new Joint(random.nextInt(plan.keys().size()), RandomBoards.kind(random));
            if (plan.sparePin().isEmpty()) {
                continue;
            }
            if (board % 3 == 0) {
                faults.removeIf(fault -> fault.nets(plan).contains(joint.net(plan)));
                faults.add(new LeadOff(joint.net(plan)));
            }
            Reading expected = expected(plan, faults, held, sureDiodes, Optional.of(joint));
            Reading read = Circuit.of(plan, faults).touching(joint).read(held);
            int which = board;
            assertEquals(
                    expected,
                    read,
                    () -> "seed " + seed + ", board " + which + ", " + joint + ", faults " + faults + ", held " + held
                            + "\n" + Netlist.text(plan, faults));
            int lead = plan.nets().size();
            long from = read.low().readsLow(lead);
            long to = plan.nets().stream()
                    .filter(net -> read.low().contains(new Pair(plan.indexOf(net), lead)))
                    .mapToLong(net -> 1L << plan.indexOf(net))
                    .sum();
            both += (from & to) != 0 ? 1 : 0;
            oneWay += from != to ? 1 : 0;
            nothing += (from | to) == 0 ? 1 : 0;
        }
        String tried = both + " on a net, " + oneWay + " one way, " + nothing + " on nothing";
        assertTrue(both > 40 && oneWay > 10 && nothing > 5, () -> "seed " + seed + " hardly tries anything: " + tried);
    }

    /** The lead is one more wire, from its own node to the joint's, both as the netlist names them. */
    private static String wireOfTheLead(Plan plan, String netlist, Joint joint) {
        String at = "joint " + plan.nets().get(joint.net(plan)).name() + " "
                + plan.keys().get(joint.key()).name() + " ";
        return "wire " + after("spare " + plan.sparePin().orElseThrow() + " ", netlist) + " " + after(at, netlist)
                + "\n";
    }

    private static String after(String words, String netlist) {
        return netlist.lines()
                .filter(line -> line.startsWith(words))
                .map(line -> line.substring(words.length()))
                .findFirst()
                .orElseThrow();
    }

    /** What conducts with every loose piece open is sure; what conducts only with them closed may read either way. */
    private static Reading expected(
            Plan plan, List<Fault> faults, BitSet held, int sureDiodes, Optional<Joint> touched) {
        List<Fault> closed = faults.stream()
                .filter(fault -> !(fault instanceof ComesAndGoes))
                .toList();
        List<Fault> open = faults.stream()
                .map(fault -> fault instanceof ComesAndGoes loose ? loose.open() : fault)
                .toList();
        Pairs sure = asItIs(plan, open, held, sureDiodes, touched).low();
        Reading atBest = asItIs(plan, closed, held, sureDiodes, touched);
        return new Reading(sure, atBest.low().plus(atBest.between()).minus(sure));
    }

    private static Reading asItIs(Plan plan, List<Fault> faults, BitSet held, int sureDiodes, Optional<Joint> touched) {
        String netlist = Netlist.text(plan, faults);
        String lead = touched.map(joint -> wireOfTheLead(plan, netlist, joint)).orElse("");
        Graph<String, DefaultWeightedEdge> towards = graph(plan, netlist + lead, held, sureDiodes + 1);
        DijkstraShortestPath<String, DefaultWeightedEdge> paths = new DijkstraShortestPath<>(towards);
        SingleSourcePaths<String, DefaultWeightedEdge> fromGround = paths.getPaths(GROUND);
        List<Pair> low = new ArrayList<>();
        List<Pair> between = new ArrayList<>();
        for (int driven = 0; driven < plan.pins().size(); driven++) {
            SingleSourcePaths<String, DefaultWeightedEdge> fromDriven = paths.getPaths(pin(plan, driven));
            for (int reads = 0; reads < plan.pins().size(); reads++) {
                String pin = pin(plan, reads);
                double diodes = Math.min(fromDriven.getWeight(pin), fromGround.getWeight(pin));
                if (reads != driven && diodes < Double.POSITIVE_INFINITY) {
                    (diodes <= sureDiodes ? low : between).add(new Pair(driven, reads));
                }
            }
        }
        return new Reading(Pairs.of(low), Pairs.of(between));
    }

    private static String pin(Plan plan, int index) {
        return "pin " + plan.pins().get(index);
    }

    /** Edges run against the current, from where it goes to where it comes from. */
    private static Graph<String, DefaultWeightedEdge> graph(Plan plan, String netlist, BitSet held, int led) {
        Graph<String, DefaultWeightedEdge> graph = new DirectedWeightedMultigraph<>(DefaultWeightedEdge.class);
        netlist.lines().map(line -> line.split(" ", -1)).forEach(part -> {
            switch (part[0]) {
                case "pin", "spare" -> both(graph, "pin " + part[1], part[2]);
                case "wire" -> both(graph, part[1], part[2]);
                case "diode" -> against(graph, part[1], part[2], 1);
                case "switch" -> {
                    if (held.get(plan.key(part[1]).orElseThrow().index())) {
                        both(graph, part[2], part[3]);
                    }
                }
                case "ground" -> both(graph, part[1], GROUND);
                case "joint", "rise" -> {}
                case "led" -> against(graph, part[1], GROUND, led);
                default -> throw new IllegalArgumentException(String.join(" ", part));
            }
        });
        return graph;
    }

    private static void both(Graph<String, DefaultWeightedEdge> graph, String node, String other) {
        against(graph, node, other, 0);
        against(graph, other, node, 0);
    }

    private static void against(Graph<String, DefaultWeightedEdge> graph, String from, String to, double diodes) {
        graph.addVertex(from);
        graph.addVertex(to);
        if (!from.equals(to)) {
            graph.setEdgeWeight(graph.addEdge(to, from), diodes);
        }
    }
}
