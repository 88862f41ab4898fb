package buzzout.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is pressed again after a repair, and what is said of it. */
class RetestTest {
    private static final Plan PLAN = ExamplePlan.quayside();

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "open:R3:M:,       | , . / Up",
                "swapped:C8:C9     | U I J K M , Mode",
                "held:Q            | Q",
                "dead:V            | V",
                "wrong-net:V:C4 | V"
            })
    void only_the_keys_that_the_repair_can_have_changed_are_called_again(String code, String keys) {
        CalledBoard board = tested(code);
        repair(board, List.of(), code);
        assertEquals(Set.of(keys.split(" ")), names(board.session().toCall()));
        board.pressAll();
        assertEquals(Optional.of(Retest.Result.WHOLE), Retest.result(board.session()));
    }

    @Test
    void a_repair_that_did_not_hold_brings_the_finding_back() {
        CalledBoard board = tested("open:R3:M:,");
        repair(board, faults("open:R3:M:,"), "open:R3:M:,");
        assertEquals(Optional.empty(), Retest.result(board.session()), "not before the last key");
        board.pressAll();
        assertEquals(Optional.of(Retest.Result.RETURNED), Retest.result(board.session()));
    }

    @Test
    void a_fault_that_hid_behind_the_repaired_one_is_no_return() {
        CalledBoard board = tested("open:R3:M:,", "reversed:/");
        repair(board, faults("reversed:/"), "open:R3:M:,");
        board.pressAll();
        assertEquals(Optional.of(Retest.Result.OTHERWISE), Retest.result(board.session()));
    }

    @Test
    void what_else_is_wrong_stays_known() {
        CalledBoard board = tested("open:R3:M:,", "reversed:O");
        repair(board, faults("reversed:O"), "open:R3:M:,");
        board.pressAll();
        assertEquals(Optional.of(Retest.Result.AS_PLANNED), Retest.result(board.session()));
        assertEquals(1, board.session().count(KeyState.REVERSED));
    }

    @Test
    void of_faults_that_look_alike_the_keys_of_all_are_called() {
        CalledBoard board = tested("dead:Up");
        board.say(new Action.Repaired("dead:Up", List.of("open:R3:/:Up", "open:C12:':Up")));
        board.unplug();
        board.plug();
        assertEquals(Set.of("Up", "Right"), names(board.session().toCall()));
    }

    @Test
    void nothing_is_forgotten_until_the_board_is_plugged_in_again() {
        CalledBoard board = tested("open:R3:M:,");
        Evidence before = board.session().evidence();
        board.say(new Action.Repaired("open:R3:M:,"));
        board.unplug();
        assertEquals(before, board.session().evidence());
        board.plug();
        assertEquals(Stage.QUIET_CHECK, board.session().stage());
        assertEquals(Evidence.NONE, board.session().evidence());
    }

    @Test
    void said_twice_it_was_done_already_and_taken_back_it_was_none() {
        CalledBoard board = tested("open:R3:M:,");
        Session before = board.session();
        board.say(new Action.Repaired("open:R3:M:,")).say(new Action.TakenBack());
        assertEquals(before, board.session());
        board.say(new Action.Repaired("open:R3:M:,")).say(new Action.Repaired("open:R3:M:,"));
        assertEquals(Stage.QUIET_CHECK, board.session().stage());
        assertEquals(4, board.session().toCall().size());
    }

    /** Space's row and C5 cross at no key, so that only V, soldered to R4, can close such a pair. */
    @Test
    void a_press_of_nobody_knows_which_key_is_forgotten_only_with_the_fault_that_can_have_made_it() {
        CalledBoard board = new CalledBoard(PLAN, faults("wrong-net:V:R4", "open:R2:K:L"));
        PLAN.keys().stream().map(Key::index).forEach(board::press);
        List<Press> unknown = unknown(board);
        assertEquals(1, unknown.size());
        repair(board, faults("wrong-net:V:R4"), "open:R2:K:L");
        assertEquals(unknown, unknown(board));
        repair(board, List.of(), "wrong-net:V:R4");
        assertEquals(List.of(), unknown(board));
        assertTrue(names(board.session().toCall()).contains("V"));
    }

    @Test
    void a_roll_call_that_follows_no_repair_has_no_result() {
        assertEquals(Optional.empty(), Retest.result(tested("open:R3:M:,").session()));
    }

    private static List<Press> unknown(CalledBoard board) {
        return board.session().presses().stream()
                .filter(press -> press.key().isEmpty())
                .toList();
    }

    private static void repair(CalledBoard board, List<Fault> left, String code) {
        board.say(new Action.Repaired(code));
        board.unplug();
        board.solder(left);
        board.plug();
        board.say(new Action.QuietCheckDone());
    }

    private static CalledBoard tested(String... codes) {
        return new CalledBoard(PLAN, faults(codes))
                .say(new Action.RollCallBegun())
                .pressAll();
    }

    private static List<Fault> faults(String... codes) {
        return List.of(codes).stream()
                .map(code -> Catalogue.find(PLAN, code).orElseThrow())
                .toList();
    }

    private static Set<String> names(Set<Integer> keys) {
        return keys.stream().map(key -> PLAN.keys().get(key).name()).collect(Collectors.toCollection(TreeSet::new));
    }
}
