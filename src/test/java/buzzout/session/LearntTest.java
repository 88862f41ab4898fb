package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.LeadsSwapped;
import buzzout.circuit.MirrorImage;
import buzzout.circuit.Pair;
import buzzout.circuit.StripesTurned;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Engine;
import buzzout.diagnosis.Grids;
import buzzout.plan.Controllers;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.LayoutFile;
import buzzout.plan.Net;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import buzzout.plan.PlanText;
import buzzout.probe.ProbeEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class LearntTest {
    static Stream<Arguments> boards() {
        return Stream.of(
                Arguments.of("Quayside 46", ExamplePlan.quayside()),
                Arguments.of("5x12 with holes and branches", Grids.branching5x12()),
                Arguments.of("stripes to the columns", Grids.turned(Controllers.ATMEGA32U4, 4, 12)),
                Arguments.of("8x16", Grids.plain8x16()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void a_board_as_planned_is_learnt_as_planned(String name, Plan plan) {
        Plan learnt = learntFrom(plan, List.of(), plan, List.of());
        assertEquals(wiring(plan), wiring(learnt), name);
        assertEquals(plan, learnt, "with the order of joints, jumpers and leads too");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void with_nothing_but_the_layout_it_is_learnt_too(String name, Plan plan) {
        for (long seed = 1; seed <= 3; seed++) {
            Plan guess = guess(plan, new Random(seed));
            Plan learnt = learntFrom(plan, List.of(), guess, List.of());
            assertEquals(wiringByPins(plan), wiringByPins(learnt), name + ", seed " + seed);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void swapped_leads_are_taken_as_they_are(String name, Plan plan) {
        for (long seed = 1; seed <= 5; seed++) {
            Random random = new Random(seed);
            int rows = plan.nets(NetKind.ROW).size();
            int one = random.nextInt(rows - 1);
            int other = rows + random.nextInt(plan.nets().size() - rows - 2);
            List<Fault> faults = List.of(new LeadsSwapped(one, one + 1), new LeadsSwapped(other, other + 2));
            Plan learnt = learntFrom(plan, faults, plan, List.of());
            assertEquals(plan.nets().get(one).pin(), learnt.nets().get(one + 1).pin(), name + ", seed " + seed);
            assertEquals(
                    plan.nets().get(other + 2).pin(), learnt.nets().get(other).pin(), name + ", seed " + seed);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void a_row_swapped_with_a_column_is_taken_as_it_is(String name, Plan plan) {
        int column = plan.nets(NetKind.ROW).size();
        Plan learnt = learntFrom(plan, List.of(new LeadsSwapped(0, column)), plan, List.of());
        assertEquals(plan.nets().get(column).pin(), learnt.nets().get(0).pin(), name);
        assertEquals(plan.nets().get(0).pin(), learnt.nets().get(column).pin(), name);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void a_mirrored_board_and_turned_stripes_are_taken_as_they_are(String name, Plan plan) {
        Plan learnt = learntFrom(plan, List.of(new MirrorImage(), new StripesTurned()), plan, List.of());
        assertEquals(plan.stripe().other(), learnt.stripe(), name);
        int first = plan.nets(NetKind.ROW).size();
        int last = plan.nets().size() - 1;
        assertEquals(plan.nets().get(last).pin(), learnt.nets().get(first).pin(), name);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void dead_keys_keep_their_planned_places_and_are_named(String name, Plan plan) {
        for (long seed = 1; seed <= 5; seed++) {
            List<Key> dead = new ArrayList<>(plan.keys());
            Collections.shuffle(dead, new Random(seed));
            dead = dead.subList(0, 4);
            List<Fault> faults = dead.stream()
                    .map(key -> Catalogue.find(plan, "dead:" + key.name()).orElseThrow())
                    .toList();
            Learnt learnt = learn(plan, faults, plan);
            assertEquals(wiring(plan), wiring(checked(learnt)), name + ", seed " + seed);
            String notes = String.join(" ", learnt.notes());
            dead.forEach(key -> assertTrue(notes.contains(key.spoken()), notes));
            assertTrue(notes.contains("were pressed and nothing came"), notes);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void with_only_the_layout_dead_keys_are_supposed_or_left_out_and_named(String name, Plan plan) {
        for (long seed = 1; seed <= 5; seed++) {
            List<Key> dead = new ArrayList<>(plan.keys());
            Collections.shuffle(dead, new Random(seed));
            dead = dead.subList(0, 3);
            List<Fault> faults = dead.stream()
                    .map(key -> Catalogue.find(plan, "dead:" + key.name()).orElseThrow())
                    .toList();
            Learnt learnt = learn(plan, faults, guess(plan, new Random(seed)));
            Plan checked = checked(learnt);
            String notes = String.join(" ", learnt.notes());
            for (Key key : plan.keys()) {
                if (dead.contains(key)) {
                    assertTrue(notes.contains(key.spoken()), notes);
                } else {
                    Key as = checked.key(key.name()).orElseThrow();
                    assertEquals(plan.row(key).pin(), checked.row(as).pin(), name + ", seed " + seed);
                    assertEquals(plan.column(key).pin(), checked.column(as).pin(), name + ", seed " + seed);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("boards")
    void of_a_board_that_is_mostly_dead_what_answers_is_learnt(String name, Plan plan) {
        for (long seed = 1; seed <= 5; seed++) {
            Random random = new Random(seed);
            List<Key> dead =
                    plan.keys().stream().filter(key -> random.nextInt(10) < 7).toList();
            List<Fault> faults = dead.stream()
                    .map(key -> Catalogue.find(plan, "dead:" + key.name()).orElseThrow())
                    .toList();
            Plan checked = checked(learn(plan, faults, guess(plan, random)));
            for (Key key : plan.keys()) {
                if (!dead.contains(key)) {
                    Key as = checked.key(key.name()).orElseThrow();
                    assertEquals(plan.row(key).pin(), checked.row(as).pin(), name + ", seed " + seed);
                    assertEquals(plan.column(key).pin(), checked.column(as).pin(), name + ", seed " + seed);
                }
            }
            assertEquals(plan.stripe(), checked.stripe(), name + ", seed " + seed);
        }
    }

    @Test
    void a_row_whose_lead_is_off_stays_as_planned() {
        Plan plan = ExamplePlan.quayside();
        Learnt learnt = learn(plan, List.of(Catalogue.find(plan, "lead-off:R2").orElseThrow()), plan);
        assertEquals(wiring(plan), wiring(checked(learnt)));
    }

    @Test
    void a_key_between_two_rows_is_named_and_the_rest_learnt() {
        Plan plan = ExamplePlan.quayside();
        Pair planned = Expected.pair(plan, plan.keys().get(0));
        Pair rows = new Pair(0, 2);
        List<Event> events = CalledKeys.on(plan, List.of(), plan).stream()
                .map(event -> instead(event, planned, rows))
                .toList();
        Learnt learnt = Learnt.from(CalledKeys.session(plan, events)).orElseThrow();
        assertTrue(
                learnt.notes().contains("Esc joins two rows, D0 and D2, as the other keys have them."),
                learnt.notes().toString());
        assertEquals(wiring(plan), wiring(checked(learnt)));
    }

    @Test
    void two_keys_at_one_crossing_are_named_and_one_of_them_moves_nowhere() {
        Plan plan = ExamplePlan.quayside();
        Fault wrong = Catalogue.find(plan, "wrong-net:Q:C3").orElseThrow();
        Learnt learnt = learn(plan, List.of(wrong), plan);
        assertTrue(
                learnt.notes().contains("Q and W both join D0 and D4; only W can be there."),
                learnt.notes().toString());
        checked(learnt);
    }

    @Test
    void a_reversed_diode_a_bypassed_one_and_a_bridge_are_named() {
        Plan plan = ExamplePlan.quayside();
        List<Fault> faults = Stream.of("reversed:O", "bypassed:J", "bridge:C2:C3:A:S")
                .map(code -> Catalogue.find(plan, code).orElseThrow())
                .toList();
        Learnt learnt = learn(plan, faults, plan);
        String notes = String.join("\n", learnt.notes());
        assertTrue(notes.contains("The diode of O sits the other way round than most."), notes);
        assertTrue(notes.contains("J conducts both ways"), notes);
        assertTrue(notes.contains("Q joins more than two pins (D0→F1, D0→D4): find the bridge first."), notes);
        assertEquals(wiring(plan), wiring(checked(learnt)));
    }

    @Test
    void presses_without_a_name_teach_nothing() {
        Plan plan = ExamplePlan.quayside();
        List<Event> events = CalledKeys.on(plan, List.of(), plan).stream()
                .filter(event -> !(event instanceof Event.ByPerson by && by.action() instanceof Action.Called))
                .toList();
        assertEquals(Optional.empty(), Learnt.from(CalledKeys.session(plan, events)));
    }

    /** The event with another pair in the place of this one. */
    private static Event instead(Event event, Pair pair, Pair other) {
        if (event instanceof Event.FromProbe from
                && from.event() instanceof ProbeEvent.Closed closed
                && closed.pair().equals(pair)) {
            return new Event.FromProbe(event.atMillis(), new ProbeEvent.Closed(closed.micros(), other));
        }
        if (event instanceof Event.FromProbe from
                && from.event() instanceof ProbeEvent.Opened opened
                && opened.pair().equals(pair)) {
            return new Event.FromProbe(event.atMillis(), new ProbeEvent.Opened(opened.micros(), other));
        }
        return event;
    }

    /** Learns, checks the plan as written, and has the same session diagnosed with it: nothing may be found. */
    private static Plan learntFrom(Plan built, List<Fault> faults, Plan said, List<String> notes) {
        Learnt learnt = learn(built, faults, said);
        assertEquals(notes, learnt.notes());
        Plan plan = checked(learnt);
        List<Event> events = CalledKeys.on(built, faults, said);
        Session session = OtherPlan.between(said, plan).read(CalledKeys.session(said, events));
        Diagnosis diagnosis = new Engine(plan).weigh(session.evidence());
        assertEquals(List.of(), diagnosis.findings());
        assertEquals(plan.keys().size(), session.count(KeyState.GOOD));
        return plan;
    }

    private static Learnt learn(Plan built, List<Fault> faults, Plan said) {
        return Learnt.from(CalledKeys.session(said, CalledKeys.on(built, faults, said)))
                .orElseThrow();
    }

    private static Plan checked(Learnt learnt) {
        PlanFile file = PlanReader.read(PlanText.of(learnt.plan(), learnt.notes()), "learnt.toml");
        Plan plan = file.plan().orElseThrow(() -> new AssertionError(file.problems()));
        assertEquals(learnt.plan(), plan, "what was written reads as what was meant");
        return plan;
    }

    /** A layout file of the board with its pins in any order. */
    private static Plan guess(Plan plan, Random random) {
        List<String> pins = new ArrayList<>(plan.nets().stream().map(Net::pin).toList());
        Collections.shuffle(pins, random);
        String written = PlanText.of(plan, List.of());
        String layout = written.substring(written.indexOf("[layout]"));
        String text = "name = \"Layout\"\ncontroller = \"" + plan.controller().name() + "\"\npins = \""
                + String.join(" ", pins) + "\"\n" + layout;
        PlanFile file = LayoutFile.read(text, "layout.toml");
        Plan guess = file.plan().orElseThrow(() -> new AssertionError(file.problems() + text));
        assertTrue(PlanReader.read(PlanText.of(guess, List.of()), "guess.toml")
                .plan()
                .isPresent());
        assertFalse(wiringByPins(guess).equals(wiringByPins(plan)));
        return guess;
    }

    private static Map<String, String> wiring(Plan plan) {
        Map<String, String> wiring = new TreeMap<>();
        plan.nets().forEach(net -> wiring.put(net.name(), net.pin() + " " + keys(plan, net)));
        wiring.put("stripe", plan.stripe().word());
        return wiring;
    }

    private static Map<String, String> wiringByPins(Plan plan) {
        Map<String, String> wiring = new TreeMap<>();
        plan.nets().forEach(net -> wiring.put(net.pin(), net.kind().word().toLowerCase(Locale.ROOT) + keys(plan, net)));
        wiring.put("stripe", plan.stripe().word());
        return wiring;
    }

    private static Set<String> keys(Plan plan, Net net) {
        return net.joints().stream()
                .map(key -> plan.keys().get(key).name())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
