package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.LeadsSwapped;
import buzzout.circuit.LinkOpen;
import buzzout.diagnosis.Diagnosis;
import buzzout.diagnosis.Finding;
import buzzout.diagnosis.Suspect;
import buzzout.plan.Key;
import buzzout.plan.NetKind;
import buzzout.plan.Plan;
import buzzout.plan.PlanReader;
import com.googlecode.lanterna.TerminalSize;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Any fault is shown with its joints, on boards of any build. */
class CloseUpTest {
    /** Columns carry the diodes, a row branches, and stripes face the row. */
    private static final Plan BRANCHED =
            PlanReader.read("""
            name = "Branched"
            controller = "ATmega32U4"
            diodes = "columns"
            [rows]
            R1 = { pin = "D0", keys = "A B C D E F", branches = ["C G H"] }
            [columns]
            C1 = { pin = "F0", keys = "A" }
            C2 = { pin = "F1", keys = "B" }
            C3 = { pin = "D4", keys = "C" }
            C4 = { pin = "D6", keys = "D" }
            C5 = { pin = "D7", keys = "E" }
            C6 = { pin = "B4", keys = "F" }
            C7 = { pin = "B5", keys = "G" }
            C8 = { pin = "B6", keys = "H" }
            [layout]
            lines = ["A B C D E F", "G H"]
            """, "branched.toml").plan().orElseThrow();

    @Test
    void the_smallest_screen_holds_the_joints_and_the_whole_repair_of_every_fault() {
        List<Fault> faults = Catalogue.of(Views.QUAYSIDE);
        View view = Views.midSession(Views.FULL);
        for (int at = 0; at < faults.size(); at += 5) {
            Fault fault = faults.get(at);
            Finding finding =
                    new Finding(List.of(new Suspect(fault, 0.9)), List.of(), 0.9, List.of(), Optional.empty());
            View found = view.with(new Snapshot(
                    view.session(),
                    new Diagnosis(List.of(finding), 0, List.of()),
                    view.snapshot().events()));
            View close = found.with(Page.lookingClose(found, new TerminalSize(80, 24)));
            String text = Picture.of(close, 80, 24).text();
            CloseUp closeUp = CloseUp.of(Views.QUAYSIDE, fault);
            if (!(fault instanceof LeadsSwapped)) {
                closeUp.suspected().forEach(joint -> assertTrue(text.contains(joint.number(Views.QUAYSIDE)), text));
            }
            String repair = fault.repair(Views.QUAYSIDE).replaceAll("\\s+", "");
            assertTrue(text.replaceAll("\\s+", "").contains(repair), text);
        }
    }

    @Test
    void a_branch_is_followed_from_the_key_that_it_leaves() {
        CloseUp closeUp = CloseUp.of(BRANCHED, fault("open:R1:C:G"));
        assertEquals(NetKind.ROW, closeUp.kind());
        List<String> names = closeUp.keys().stream().map(Key::name).toList();
        assertTrue(
                List.of(List.of("H", "G", "C", "B", "A"), List.of("A", "B", "C", "G", "H"))
                        .contains(names),
                names::toString);
        int open = names.indexOf("G") < names.indexOf("C") ? names.indexOf("G") : names.indexOf("C");
        assertEquals(CloseUp.Between.SUSPECT, closeUp.between(open, NetKind.ROW));
    }

    @Test
    void every_broken_link_is_the_only_suspect_one_shown() {
        for (Plan plan : List.of(BRANCHED, Views.QUAYSIDE)) {
            for (Fault fault : Catalogue.of(plan)) {
                if (fault instanceof LinkOpen) {
                    CloseUp closeUp = CloseUp.of(plan, fault);
                    long suspect = java.util.stream.IntStream.range(
                                    0, closeUp.keys().size() - 1)
                            .filter(at -> closeUp.between(at, closeUp.kind()) == CloseUp.Between.SUSPECT)
                            .count();
                    assertEquals(1, suspect, fault.code(plan));
                }
            }
        }
    }

    private static Fault fault(String code) {
        return Catalogue.find(BRANCHED, code).orElseThrow(() -> new AssertionError(code));
    }
}
