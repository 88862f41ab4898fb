package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.FaultKind;
import buzzout.circuit.Pair;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.report.UnitHistory.Standing;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BatchTest {
    private static final Plan PLAN = ExamplePlan.quayside();
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-11-21T12:00:00+01:00");
    private static final Set<String> ALL = Set.of();

    @Test
    void a_unit_passes_when_a_retest_pressed_only_what_the_repair_can_have_changed() {
        UnitHistory unit = unit(log(0, ALL, "dead:Q"), log(1, Set.of("Q")));
        assertEquals(Standing.PASSED, unit.standing());
        assertTrue(unit.isTestedWhole());
    }

    @Test
    void a_unit_stays_open_when_the_retest_did_not_press_what_was_silent() {
        UnitHistory unit = unit(log(0, ALL, "dead:Q"), log(1, Set.of("W")));
        assertEquals(Standing.OPEN, unit.standing());
        assertEquals(List.of("Q"), unit.notGood());
    }

    @Test
    void a_unit_with_untested_keys_is_open_and_counts_for_no_prior() {
        UnitHistory unit = unit(log(0, Set.of("Q", "W")));
        assertEquals(Standing.OPEN, unit.standing());
        assertEquals(List.of(), ProposedPrior.of(new Batch("Quayside 46", List.of(unit), List.of())));
        assertTrue(PriorsToml.of(new Batch("Quayside 46", List.of(unit), List.of()))
                .startsWith("# No unit of Quayside 46 has been tested whole"));
    }

    @Test
    void sessions_are_taken_by_their_time_and_not_by_their_order() {
        UnitHistory unit = unit(log(1, ALL), log(0, ALL, "dead:Q"));
        assertEquals(Standing.PASSED, unit.standing());
    }

    @Test
    void a_fault_in_two_sessions_is_one_and_the_later_session_names_it() {
        UnitHistory unit = unit(log(0, ALL, "dead:Q|dead:W"), log(1, ALL, "dead:W"));
        assertEquals(
                List.of("dead:W true 1"),
                unit.faults().stream()
                        .map(fault -> fault.code() + " " + fault.settled() + " " + fault.times())
                        .toList());
    }

    @Test
    void a_fault_that_was_gone_and_comes_back_counts_again() {
        UnitHistory unit = unit(log(0, ALL, "dead:Q"), log(1, ALL), log(2, ALL, "dead:Q"));
        assertEquals(2, unit.faults().get(0).times());
        Batch batch = new Batch("Quayside 46", List.of(unit), List.of());
        assertEquals(List.of("Q-07"), batch.again().get(0).units());
        assertEquals(Map.of(FaultKind.KEY_OPEN, 1), batch.faultsByKind());
    }

    @Test
    void a_session_that_did_not_press_it_does_not_show_a_fault_gone() {
        UnitHistory unit = unit(log(0, ALL, "dead:Q"), log(1, Set.of("W")), log(2, ALL, "dead:Q"));
        assertEquals(1, unit.faults().get(0).times());
    }

    @Test
    void sessions_without_a_mark_count_for_no_unit() {
        WeighedLog marked = log(0, ALL);
        WeighedLog unmarked = new WeighedLog(
                "none.jsonl", new Outcome(Optional.empty(), Optional.empty(), session(ALL), Diagnosis.NOTHING_YET));
        Batch batch = Batch.of(List.of(marked, unmarked)).get(0);
        assertEquals(1, batch.units().size());
        assertTrue(BatchText.of(batch, true).contains("name no unit (`run --unit MARK`): none.jsonl"));
    }

    @Test
    void what_a_retest_did_not_press_is_neither_fixed_nor_left() {
        Comparison comparison = Comparison.of(log(0, ALL, "dead:Q", "dead:P"), log(1, Set.of("P")));
        assertEquals(List.of("dead:P"), codes(comparison.fixed()));
        assertEquals(List.of("dead:Q"), codes(comparison.unproven()));
        assertTrue(ComparisonText.of(comparison, true).contains("Open:   Q never conducts"));
        assertTrue(ComparisonText.of(comparison, true).contains("not all of it pressed again."));
    }

    @Test
    void logs_that_may_not_belong_together_are_remarked_on() {
        WeighedLog first = log(1, ALL);
        WeighedLog other = new WeighedLog(
                "other.jsonl",
                new Outcome(Optional.of("Q-08"), Optional.of(NOON), session(ALL), Diagnosis.NOTHING_YET));
        assertEquals(
                List.of(
                        "The logs are of different units: Q-07 and Q-08.",
                        "The second session began before the first; should they be the other way round?"),
                Comparison.of(first, other).remarks());
    }

    private static List<String> codes(List<Comparison.Named> findings) {
        return findings.stream().map(Comparison.Named::code).toList();
    }

    private static UnitHistory unit(WeighedLog... logs) {
        return new UnitHistory("Q-07", Arrays.asList(logs));
    }

    /**
     * A session of so many hours after noon in which only some keys were pressed, or all.
     *
     * @param findings each the codes of its suspects, with bars between; the keys of dead ones are silent
     */
    private static WeighedLog log(int hours, Set<String> pressed, String... findings) {
        List<Finding> found = Arrays.stream(findings).map(BatchTest::finding).toList();
        Session session = session(pressed, findings);
        return new WeighedLog(
                hours + ".jsonl",
                new Outcome(
                        Optional.of("Q-07"),
                        Optional.of(NOON.plusHours(hours)),
                        session,
                        new Diagnosis(found, 0, List.of())));
    }

    private static Session session(Set<String> pressed, String... findings) {
        Session session = Session.of(PLAN).after(new Event.ByPerson(0, new Action.QuietCheckDone()));
        long micros = 0;
        for (Key key : PLAN.keys()) {
            micros += 300_000;
            if (Arrays.asList(findings).contains("dead:" + key.name())) {
                session = session.after(new Event.ByPerson(micros / 1000, new Action.NothingCame(key.index())));
            } else if (pressed.isEmpty() || pressed.contains(key.name())) {
                session =
                        session.after(new Event.FromProbe(micros / 1000, new ProbeEvent.Closed(micros, planned(key))));
                session = session.after(
                        new Event.FromProbe(micros / 1000, new ProbeEvent.Opened(micros + 90_000, planned(key))));
            }
        }
        return session;
    }

    private static Pair planned(Key key) {
        return new Pair(key.net(PLAN.stripe()), key.net(PLAN.stripe().other()));
    }

    private static Finding finding(String codes) {
        List<Suspect> suspects = Arrays.stream(codes.split("\\|"))
                .map(code -> new Suspect(fault(code), 0.9))
                .toList();
        return new Finding(suspects, List.of(), 0.9, List.of(), Optional.empty());
    }

    private static Fault fault(String code) {
        return Catalogue.find(PLAN, code).orElseThrow();
    }
}
