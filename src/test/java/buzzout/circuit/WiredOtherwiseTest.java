package buzzout.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Boards whose every part is good, but wired to another place: what each key joins is reckoned by hand here. */
class WiredOtherwiseTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @Test
    void keys_on_two_swapped_columns_read_on_each_other_s_pins_and_no_others_do() {
        Circuit circuit = circuit("swapped:C3:C4");
        int third = net("C3");
        int fourth = net("C4");
        for (Key key : PLAN.keys()) {
            int column = key.column() == third ? fourth : key.column() == fourth ? third : key.column();
            assertJoins(circuit, key, new Pair(key.row(), column));
        }
    }

    @Test
    void a_mirrored_board_reads_every_column_at_its_opposite_and_rows_as_planned() {
        Circuit circuit = circuit("mirrored");
        int sum = net("C1") + net("C12");
        for (Key key : PLAN.keys()) {
            assertJoins(circuit, key, new Pair(key.row(), sum - key.column()));
        }
    }

    @Test
    void with_every_diode_turned_each_pair_runs_the_other_way() {
        for (Key key : PLAN.keys()) {
            assertJoins(circuit("turned"), key, new Pair(key.column(), key.row()));
        }
    }

    @Test
    void turned_as_a_whole_and_one_by_itself_a_diode_is_as_planned() {
        Key key = key("K");
        assertJoins(circuit("turned", "reversed:K"), key, new Pair(key.row(), key.column()));
    }

    @Test
    void a_key_s_end_on_a_neighbouring_net_reads_there_and_leaves_its_neighbour_alone() {
        Circuit onRow = circuit("wrong-net:K:R3");
        assertJoins(onRow, key("K"), new Pair(net("R3"), net("C9")));
        assertJoins(onRow, key("I"), new Pair(net("R1"), net("C9")));
        Circuit onColumn = circuit("wrong-net:K:C8");
        assertJoins(onColumn, key("K"), new Pair(net("R2"), net("C8")));
        assertJoins(onColumn, key("J"), new Pair(net("R2"), net("C8")));
    }

    @Test
    void an_end_can_stray_to_the_nets_before_and_behind_only_and_to_the_joint_nearest_there() {
        Set<String> strays = FaultKind.WRONG_NET.all(PLAN).stream()
                .map(fault -> fault.code(PLAN))
                .filter(code -> code.startsWith("wrong-net:K:"))
                .collect(Collectors.toSet());
        assertEquals(Set.of("wrong-net:K:R1", "wrong-net:K:R3", "wrong-net:K:C8", "wrong-net:K:C10"), strays);
        FaultKind.WRONG_NET.all(PLAN).stream().map(WrongNet.class::cast).forEach(fault -> {
            Key strayed = PLAN.keys().get(fault.key());
            Key at = PLAN.keys().get(fault.atKey());
            assertTrue(
                    PLAN.keys().stream()
                            .filter(each -> each.net(fault.strayed()) == at.net(fault.strayed()))
                            .allMatch(each -> apart(strayed, each) >= apart(strayed, at)),
                    fault.code(PLAN));
        });
    }

    @Test
    void solder_bridges_joints_of_neighbouring_nets_that_lie_within_reach_and_nearest_to_each_other() {
        List<Bridge> bridges =
                FaultKind.BRIDGE.all(PLAN).stream().map(Bridge.class::cast).toList();
        assertFalse(bridges.isEmpty());
        for (Bridge bridge : bridges) {
            Key one = PLAN.keys().get(bridge.key());
            Key other = PLAN.keys().get(bridge.otherKey());
            assertEquals(1, bridge.otherNet() - bridge.net(), bridge.code(PLAN));
            assertTrue(apart(one, other) <= 1.6, bridge.code(PLAN));
            assertTrue(
                    PLAN.nets().get(bridge.otherNet()).joints().stream()
                            .noneMatch(each -> apart(one, PLAN.keys().get(each)) < apart(one, other) - 1e-6),
                    bridge.code(PLAN));
        }
        assertTrue(bridges.stream().anyMatch(each -> each.code(PLAN).equals("bridge:C6:C7:G:H")));
    }

    @Test
    void jumpers_and_links_are_told_apart() {
        assertEquals(
                Set.of("jumper-off:R1:T:Y", "jumper-off:R2:G:H", "jumper-off:R3:B:N", "jumper-off:R4:Space:Enter"),
                FaultKind.JUMPER_OFF.all(PLAN).stream()
                        .map(fault -> fault.code(PLAN))
                        .collect(Collectors.toSet()));
        long links = PLAN.nets().stream().mapToLong(net -> net.links().size()).sum();
        assertEquals(links - 4, FaultKind.LINK_OPEN.all(PLAN).size());
        assertEquals(
                "the jumper of R1 is off between T and Y",
                fault("jumper-off:R1:T:Y").says(PLAN));
        assertEquals("R1 is open between Q and W", fault("open:R1:Q:W").says(PLAN));
        assertTrue(fault("jumper-off:R1:T:Y").repair(PLAN).endsWith("or replace the jumper."));
        assertTrue(fault("open:R1:Q:W").repair(PLAN).endsWith("or replace the link."));
        assertEquals("R1 and C2 are bridged at Q", fault("crossing:R1:C2:Q").says(PLAN));
        assertEquals(
                "C6 and C7 are bridged between G and H",
                fault("bridge:C6:C7:G:H").says(PLAN));
    }

    /** Each board, read pin by pin, is what the plan that accepts it says. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "swapped:C3:C4",
                "swapped:R1:R2",
                "mirrored",
                "turned",
                "mirrored swapped:C3:C4 turned",
                "far-swapped:R1:R4"
            })
    void a_board_accepted_as_wired_reads_as_its_new_plan(String codes) {
        List<Fault> faults =
                Stream.of(codes.split(" ", -1)).map(WiredOtherwiseTest::fault).toList();
        assertTrue(faults.stream().allMatch(AsWired::canBe));
        AsWired asWired = AsWired.of(PLAN, faults);
        Plan accepted = accepted(asWired);
        Circuit wired = Circuit.of(PLAN, faults);
        Circuit planned = Circuit.of(accepted);
        for (Key key : PLAN.keys()) {
            assertEquals(byPins(PLAN, wired.pressed(key)), byPins(accepted, planned.pressed(key)), key.name());
        }
        assertEquals(
                asWired.pins().keySet(),
                accepted.nets().stream()
                        .filter(net -> !net.pin()
                                .equals(PLAN.nets().get(accepted.indexOf(net)).pin()))
                        .map(Net::name)
                        .collect(Collectors.toSet()));
    }

    @Test
    void what_needs_an_iron_cannot_be_accepted() {
        Catalogue.of(PLAN).stream()
                .filter(AsWired::canBe)
                .forEach(fault -> assertTrue(
                        Set.of("mirrored", "turned", "swapped", "far-swapped")
                                .contains(fault.kind().code()),
                        fault.code(PLAN)));
        assertEquals(new AsWired(Map.of(), PLAN.stripe()), AsWired.of(PLAN, List.of(fault("dead:K"))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "open:R3:M:, > M ,",
                "jumper-off:R2:G:H > G H",
                "lead-off:C4 > E",
                "pin-low:R2 > Tab",
                "pin-dragged:C12 > Back",
                "dead:O > O",
                "reversed:O > O",
                "held:O > O",
                "wrong-net:K:R3 > K",
                "bridge:C6:C7:G:H > G H",
                "crossing:R1:C2:Q > Q",
                "swapped:C1:C2 > Esc Q",
                "loose:open:R3:M:, > M ,",
                "turned > ",
                "mirrored > "
            })
    void the_keys_to_look_at_are_those_at_its_joints(String line) {
        String[] parts = line.split(" > ", -1);
        assertEquals(
                parts[1],
                Concerned.keys(PLAN, fault(parts[0]))
                        .map(key -> PLAN.keys().get(key).name())
                        .collect(Collectors.joining(" ")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lead-off:C4 > C4.1",
                "pin-low:R2 > R2.1",
                "held:O > C10.1",
                "reversed:O > R1.10",
                "wrong-net:K:R3 > R2.9",
                "wrong-net:K:C8 > C9.2",
                "crossing:R1:C2:Q > R1.2 and C2.1",
                "swapped:C1:C2 > C1.1 and C2.1"
            })
    void the_joints_to_look_at_have_their_numbers(String line) {
        String[] parts = line.split(" > ", -1);
        assertEquals(parts[1], Part.numbers(PLAN, fault(parts[0]).parts()));
    }

    private static Plan accepted(AsWired asWired) {
        List<Net> nets = PLAN.nets().stream()
                .map(net -> new Net(
                        net.name(),
                        net.kind(),
                        asWired.pins().getOrDefault(net.name(), net.pin()),
                        net.joints(),
                        net.links(),
                        net.leadJoint(),
                        net.colour()))
                .toList();
        return new Plan(
                PLAN.name(),
                PLAN.controller(),
                asWired.stripe(),
                PLAN.diodes(),
                nets,
                PLAN.keys(),
                PLAN.sparePin(),
                PLAN.bounceLimitMillis());
    }

    private static Set<String> byPins(Plan plan, Reading reading) {
        assertEquals(Pairs.NONE, reading.between());
        return reading.low().list().stream()
                .map(pair -> plan.pins().get(pair.low()) + "→" + plan.pins().get(pair.reads()))
                .collect(Collectors.toSet());
    }

    private static void assertJoins(Circuit circuit, Key key, Pair pair) {
        assertEquals(new Reading(Pairs.of(pair), Pairs.NONE), circuit.pressed(key), key.name());
    }

    private static Circuit circuit(String... codes) {
        return Circuit.of(PLAN, Stream.of(codes).map(WiredOtherwiseTest::fault).toList());
    }

    private static Fault fault(String code) {
        return Catalogue.find(PLAN, code).orElseThrow(() -> new AssertionError(code));
    }

    private static Key key(String name) {
        return PLAN.key(name).orElseThrow();
    }

    private static int net(String name) {
        return PLAN.nets().stream()
                .filter(net -> net.name().equals(name))
                .mapToInt(PLAN::indexOf)
                .findFirst()
                .orElseThrow();
    }

    /** In key pitches, middle to middle. */
    private static double apart(Key one, Key other) {
        return Math.hypot(
                one.place().middle() - other.place().middle(),
                one.place().y() - other.place().y());
    }
}
