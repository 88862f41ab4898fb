package buzzout.screen;

import static org.junit.jupiter.api.Assertions.assertTrue;

import buzzout.session.KeyState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The help tells every state a key can have, with the mark that the board shows. */
class HelpTest {
    @ParameterizedTest
    @EnumSource
    void names_each_state_beside_its_mark(KeyState state) {
        for (Look look : new Look[] {Views.FULL, Views.ASCII}) {
            View view = Views.midSession(look);
            String help =
                    Picture.of(view.with(view.focus().withHelp(true)), 80, 24).text();
            String line = " " + state.mark(look.ascii()) + " " + state.word() + " ";
            assertTrue(help.contains(line), () -> "\"" + line + "\" is not in\n" + help);
        }
    }
}
