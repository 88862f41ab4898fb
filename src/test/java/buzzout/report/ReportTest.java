package buzzout.report;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.NextStep;
import buzzout.diagnosis.Step;
import buzzout.diagnosis.Suspect;
import buzzout.journal.LogProblem;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Joint;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.probe.ProbeEvent;
import buzzout.session.Action;
import buzzout.session.Event;
import buzzout.session.Session;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReportTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @Test
    void a_finding_reads_like_a_colleagues_note() {
        assertEquals("""
                Quayside 46, unit Q-03, session of 2026-11-25 10:14

                2 findings: 1 of 46 keys good, 45 untested.
                  · untested     Q W E R T Y U I O P Back Tab A S D F G H J K L ; ' Shift Z X C
                                 V B N M , . / Up Ctrl Log Band Alt Space Enter Mode Left Down
                                 Right

                 1. R3 is open between M and ",". This is very likely (97 %).
                    Seen: Nothing came from ,, ., / and Up.
                    It might also be, though that fits less well:
                      - "," never conducts: its switch, its diode or one of their joints is open
                        (2 %)
                    To repair: Unplug first. Reheat both joints of R3 between M and "," (R3.8,
                        fifth joint from the left, and R3.9, fourth joint from the left; solder
                        side), or replace the link.

                 2. One of these, which what was seen cannot tell apart. That it is one of them
                    is possible (48 %).
                      - the diode of O sits the wrong way round (30 %)
                      - the diode of P sits the wrong way round (18 %)
                    To be sure: Press O once more.
                    To repair the first: Unplug first. Unsolder the diode of O at R1.10 and turn
                        it, so that its stripe faces the row.

                Doubtful: Q closed R1->C9, perhaps another key was pressed.

                The search stopped early: up to 2 % of the probability lies with explanations
                that were not looked at.

                Next: Touch C5 at V, the third joint from the top (solder side): if the lead
                      meets nothing, C5 is open.

                Before you solder
                  Unplug the board before you solder, and before you turn a meter to ohms or to
                  the beeper.
                  The iron is hot enough to burn after it is off. Wear eye protection when you
                  solder or cut legs, draw the fumes away, and wash your hands after leaded
                  solder.
                  Local rules and the makers' instructions come before anything said here.
                """, FindingsText.of(outcome(), true).replace("  . untested  ", "  · untested  "));
    }

    @Test
    void no_line_is_wider_than_80_columns_and_ascii_means_ascii() {
        String text = FindingsText.of(outcome(), true);
        assertAll(text.lines().map(line -> () -> assertTrue(line.length() <= 80, line)));
        assertTrue(text.chars().allMatch(each -> each < 0x7f), text);
        assertFalse(FindingsText.of(outcome(), false).chars().allMatch(each -> each < 0x7f));
    }

    @Test
    void the_json_is_the_documented_one() {
        String json = DiagnosisJson.of(
                "q.jsonl", Optional.of(outcome()), List.of(new LogProblem("q.jsonl", 7, "odd \u009b")));
        String keys = json.replaceAll(".*\"keys\":\\{(.*?)\\}.*", "$1");
        assertEquals(46, keys.split("\",\"", -1).length);
        assertEquals(
                """
                {"format":"buzzout-diagnosis","version":1,"log":"q.jsonl","verdict":"faulty","board":"Quayside 46",\
                "unit":"Q-03","started":"2026-11-25T10:14:00+01:00","states":{"untested":45,"good":1,"silent":0,\
                "misplaced":0,"doubled":0,"reversed":0,"two-way":0,"held":0,"intermittent":0},"keys":{...},\
                "findings":[{"probability":0.9712,"suspects":[{"code":"open:R3:M:,","kind":"open","says":"R3 is open \
                between M and \\",\\"","repair":"Reheat both joints of R3 between M and \\",\\" (R3.8, fifth joint from the left, \
                and R3.9, fourth joint from the left; solder side), or replace the link.","probability":0.9712}],"otherwise":\
                [{"code":"dead:,","kind":"dead","says":"\\",\\" never conducts: its switch, its diode or one of their joints \
                is open","repair":"...","probability":0.02}],"because":["nothing came from ,, ., / and Up"],"settle":\
                null,"repair":"Reheat both joints of R3 between M and \\",\\" (R3.8, fifth joint from the left, and \
                R3.9, fourth joint from the left; solder side), or replace the link."}],"next":[{"step":"touch","net":"C5","key":"V",\
                "says":"touch C5 at V, the third joint from the top (solder side): if the lead meets nothing, C5 is \
                open","effort":4.25}],"unexplored":0.02,"troubles":["Q closed R1→C9, \
                perhaps another key was pressed"],"flexed":[],"together":[],"bounce":{"limitMicros":10000,"contacts":{"Esc":{"presses":1,"over":0,\
                "longestPressingMicros":0,"longestLettingGoMicros":0}},"histogram":[{"fromMicros":0,"toMicros":500,\
                "presses":1},{"fromMicros":500,"toMicros":1000,"presses":0},{"fromMicros":1000,"toMicros":2000,\
                "presses":0},{"fromMicros":2000,"toMicros":5000,"presses":0},{"fromMicros":5000,"toMicros":10000,\
                "presses":0},{"fromMicros":10000,"toMicros":20000,"presses":0},{"fromMicros":20000,"presses":0}]},\
                "problems":["q.jsonl:7: odd \\u009b"]}""",
                json.replace(keys, "...")
                        .replaceAll("(\"dead:,\".*?\"repair\":\")(?:\\\\.|[^\"\\\\])*", "$1...")
                        .replaceAll(",\\{\"probability\":0\\.48,.*?\"\\}\\],\"next", "],\"next"));
    }

    @ParameterizedTest
    @CsvSource({
        "0.004,unlikely (under 1 %)",
        "0.2,possible (20 %)",
        "0.61,likely (61 %)",
        "0.9,very likely (90 %)",
        "0.995,almost certain (over 99 %)",
        "1,almost certain (over 99 %)"
    })
    void no_probability_is_called_nought_or_certain(double probability, String words) {
        assertEquals(words, Likelihood.inWords(probability));
    }

    @Test
    void a_silent_key_without_a_finding_is_unexplained_and_wrong() {
        Session session = session().after(new Event.ByPerson(900, new Action.NothingCame(7)));
        Outcome outcome = new Outcome(Optional.empty(), Optional.empty(), session, Diagnosis.NOTHING_YET);
        assertEquals(Verdict.UNEXPLAINED, outcome.verdict());
        assertTrue(outcome.verdict().isWrong());
        assertTrue(FindingsText.of(outcome, false).contains("Something is wrong that no single finding explains yet"));
    }

    @Test
    void untested_keys_alone_are_no_fault() {
        Outcome outcome = new Outcome(Optional.empty(), Optional.empty(), session(), Diagnosis.NOTHING_YET);
        assertEquals(Verdict.UNFINISHED, outcome.verdict());
        assertFalse(outcome.verdict().isWrong());
    }

    private static Outcome outcome() {
        Finding open = new Finding(
                List.of(suspect("open:R3:M:,", 0.97123)),
                List.of(suspect("dead:,", 0.02)),
                0.97123,
                List.of("nothing came from ,, ., / and Up"),
                Optional.empty());
        Finding reversed = new Finding(
                List.of(suspect("reversed:O", 0.3), suspect("reversed:P", 0.18)),
                List.of(),
                0.48,
                List.of(),
                Optional.of("press O once more"));
        Joint joint = new Joint(PLAN.key("V").orElseThrow().index(), NetKind.COLUMN);
        NextStep step = new NextStep(
                new Step.Touch(joint), "touch " + joint.says(PLAN), "if the lead meets nothing, C5 is open", 4.25);
        Diagnosis diagnosis = new Diagnosis(
                List.of(open, reversed),
                0.02,
                List.of("Q closed R1→C9, perhaps another key was pressed"),
                List.of(),
                List.of(step));
        return new Outcome(
                Optional.of("Q-03"),
                Optional.of(OffsetDateTime.parse("2026-11-25T10:14:00+01:00")),
                session(),
                diagnosis);
    }

    /** Esc answers as planned; nothing else was pressed. */
    private static Session session() {
        Pair esc = new Pair(PLAN.keys().get(0).row(), PLAN.keys().get(0).column());
        return Session.of(PLAN)
                .after(new Event.FromProbe(1, new ProbeEvent.Found(new buzzout.probe.Identity(1, "1", "x", 9, 1), "p")))
                .after(new Event.FromProbe(2, new ProbeEvent.WholeState(0, Pairs.NONE)))
                .after(new Event.ByPerson(3, new Action.QuietCheckDone()))
                .after(new Event.FromProbe(500, new ProbeEvent.Closed(500_000, esc)))
                .after(new Event.FromProbe(600, new ProbeEvent.Opened(600_000, esc)));
    }

    private static Suspect suspect(String code, double probability) {
        return new Suspect(Catalogue.find(PLAN, code).orElseThrow(), probability);
    }
}
