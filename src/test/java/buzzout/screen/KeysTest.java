package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import buzzout.session.Action;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeysTest {
    private final View demo = Views.midSession(Views.FULL);
    private final View soldered =
            View.of(new Setting(Optional.empty(), Optional.empty(), Views.FULL, false), demo.snapshot(), demo.focus());

    @Test
    void q_and_control_c_and_the_end_of_input_quit() {
        for (KeyStroke stroke : List.of(letter('q'), new KeyStroke('c', true, false), new KeyStroke(KeyType.EOF))) {
            assertEquals(Optional.of(new Command.Quit()), Keys.command(stroke, demo));
        }
    }

    @Test
    void escape_only_closes_the_help() {
        assertEquals(Optional.of(new Command.CloseHelp()), Keys.command(new KeyStroke(KeyType.Escape), demo));
    }

    @ParameterizedTest
    @ValueSource(chars = {'q', 'n', 'e', 'r', 'u', 'p', 's', 'v', '?'})
    void a_letter_right_after_escape_does_nothing(char letter) {
        assertEquals(Optional.empty(), Keys.command(new KeyStroke(letter, false, true), demo));
    }

    @Test
    void v_goes_through_the_suspects_close_by_and_back_to_the_board() {
        assertEquals(Optional.of(new Command.LookClose()), Keys.command(letter('v'), demo));
        TerminalSize size = new TerminalSize(80, 24);
        View first = demo.with(Page.lookingClose(demo, size));
        assertEquals(OptionalInt.of(0), first.focus().finding());
        assertEquals(OptionalInt.of(0), first.closeUp());
        assertEquals(Optional.empty(), Keys.command(letter('n'), first));
        View second = first.with(Page.choosing(first, size, 1));
        View other = second.with(Page.lookingClose(second, size));
        assertEquals(OptionalInt.of(1), other.closeUp());
        assertEquals(
                OptionalInt.empty(), other.with(Page.lookingClose(other, size)).closeUp());
        View without = demo.with(Views.sitting().found().quietCheckDone().snapshot());
        assertEquals(without.focus(), Page.lookingClose(without, size));
    }

    @Test
    void nothing_came_concerns_the_selected_key() {
        View moved = demo.with(demo.focus().moved(Views.QUAYSIDE, 1, 0));
        assertEquals(
                Optional.of(new Command.Ask(new Request.NothingCame(moved.subject()))),
                Keys.command(letter('n'), moved));
    }

    @Test
    void r_begins_a_read_through_and_ends_the_one_that_runs() {
        assertEquals(Optional.of(new Command.Ask(new Request.BeginReadThrough())), Keys.command(letter('r'), soldered));
        View reading = demo.with(Views.sitting()
                .found()
                .quietCheckDone()
                .tell(new Action.ReadThroughBegun())
                .snapshot());
        assertEquals(Optional.of(new Command.Ask(new Request.EndReadThrough())), Keys.command(letter('r'), reading));
    }

    @Test
    void only_a_simulated_board_has_its_keys_pressed_from_here() {
        Optional<Command> press = Optional.of(new Command.Ask(new Request.Press(demo.subject())));
        assertEquals(press, Keys.command(new KeyStroke(KeyType.Enter), demo));
        assertEquals(press, Keys.command(letter('p'), demo));
        assertEquals(Optional.empty(), Keys.command(new KeyStroke(KeyType.Enter), soldered));
        assertEquals(Optional.empty(), Keys.command(letter('p'), soldered));
    }

    @Test
    void words_about_presses_are_taken_only_while_pressing() {
        Stream.of(
                        Views.sitting(),
                        Views.sitting().found(),
                        Views.sitting().found().quietCheckDone().tell(new Action.Ended()))
                .map(sitting -> demo.with(sitting.snapshot()))
                .forEach(other -> {
                    for (char letter : new char[] {'n', 'e', 'r', 'u', 'p', 'f', 'a'}) {
                        assertEquals(Optional.empty(), Keys.command(letter(letter), other));
                    }
                });
    }

    @Test
    void words_about_presses_are_not_taken_blindly_under_the_help() {
        View covered = demo.with(demo.focus().withHelp(true));
        for (char letter : new char[] {'n', 'e', 'r', 'u', 'p', 'f', 'a'}) {
            assertEquals(Optional.empty(), Keys.command(letter(letter), covered));
            assertEquals(
                    Optional.empty(),
                    Keys.command(letter(letter), demo.with(demo.focus().withBounce(true))));
        }
    }

    @Test
    void c_begins_a_roll_call_and_leaves_it() {
        assertEquals(Optional.of(new Command.Ask(new Request.BeginRollCall())), Keys.command(letter('c'), demo));
        View calling = demo.with(called().snapshot());
        assertEquals(Optional.of(new Command.Ask(new Request.LeaveRollCall())), Keys.command(letter('c'), calling));
    }

    @Test
    void in_a_roll_call_enter_and_n_are_about_the_called_key_and_between_two_calls_about_none() {
        View calling = demo.with(called().snapshot());
        assertEquals(
                Optional.of(new Command.Ask(new Request.Press(11))),
                Keys.command(new KeyStroke(KeyType.Enter), calling));
        assertEquals(Optional.of(new Command.Ask(new Request.NothingCame(11))), Keys.command(letter('n'), calling));
        assertEquals(
                Optional.of(new Command.Ask(new Request.Press(demo.selected()))),
                Keys.command(letter('p'), calling),
                "a slip on purpose");
        View between = demo.with(called().press(11).snapshot());
        assertEquals(Optional.empty(), Keys.command(new KeyStroke(KeyType.Enter), between));
        assertEquals(Optional.empty(), Keys.command(letter('n'), between));
    }

    @Test
    void d_says_that_the_chosen_finding_is_repaired_whichever_of_its_suspects_it_was() {
        assertEquals(Optional.empty(), Keys.command(letter('d'), demo), "none is chosen");
        View chosen = demo.with(demo.focus().choosing(1, Views.key("V").index(), 0));
        assertEquals(
                Optional.of(new Command.Ask(new Request.Repaired("dead:V", List.of("open:C5:F:V")))),
                Keys.command(letter('d'), chosen));
    }

    private static Sitting called() {
        return Views.sitting()
                .found()
                .quietCheckDone()
                .tell(new Action.RollCallBegun())
                .tell(new Action.Called(11));
    }

    private static KeyStroke letter(char letter) {
        return new KeyStroke(letter, false, false);
    }
}
