package buzzout.report;

import buzzout.plan.Key;
import buzzout.session.KeyState;
import buzzout.session.Session;
import java.util.List;
import java.util.stream.Collectors;

/** The marks of a board's picture in words: which states occur, what they mean, and which keys have them. */
final class StatesTable {
    private StatesTable() {}

    static void put(Markup page, Session session) {
        page.open("table").open("thead").open("tr");
        page.put("th", "Mark").put("th", "State").put("th", "Meaning").put("th", "Keys");
        page.close().close().open("tbody").line();
        List<KeyState> states = session.states();
        for (KeyState state : KeyState.values()) {
            List<String> names = session.plan().keys().stream()
                    .filter(key -> states.get(key.index()) == state)
                    .map(Key::name)
                    .toList();
            if (!names.isEmpty()) {
                page.open("tr").put("td", BoardPicture.sign(state), "class", "mark");
                page.put("td", state.word()).put("td", meaning(state));
                page.put("td", named(state, names)).close().line();
            }
        }
        page.close().close().line();
    }

    private static String named(KeyState state, List<String> names) {
        String count = String.valueOf(names.size());
        return state == KeyState.GOOD ? count : names.stream().collect(Collectors.joining("  ", count + ": ", ""));
    }

    private static String meaning(KeyState state) {
        return switch (state) {
            case UNTESTED -> "not pressed yet";
            case GOOD -> "answered as planned";
            case SILENT -> "pressed, nothing came";
            case MISPLACED -> "answers as another position";
            case DOUBLED -> "answers with company";
            case REVERSED -> "conducts only the wrong way";
            case TWO_WAY -> "conducts both ways";
            case HELD -> "conducts unpressed";
            case INTERMITTENT -> "comes and goes";
        };
    }
}
