package buzzout.diagnosis;

import buzzout.plan.Controller;
import buzzout.plan.Controllers;
import buzzout.plan.Plan;
import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Boards of rows by columns for proofs, read from plan text as a person would write it.
 *
 * <p>Key {@code C4} sits where row R3, the third, crosses column C4, the fourth.
 */
public final class Grids {
    private Grids() {}

    public static Plan plain(Controller controller, int rows, int columns) {
        return plan(controller, rows, columns, Set.of(), Map.of(), "");
    }

    /** The same with stripes facing the columns, whose chains are made of diode legs. */
    public static Plan turned(Controller controller, int rows, int columns) {
        return plan(controller, rows, columns, Set.of(), Map.of(), "stripe = \"column\"\ndiodes = \"columns\"\n");
    }

    /** Five rows by twelve columns, five positions missing, three branches, two jumpers, two leads in mid-chain. */
    public static Plan branching5x12() {
        return plan(
                Controllers.ATMEGA32U4,
                5,
                12,
                Set.of("A6", "A7", "E4", "E9", "E12"),
                Map.of(
                        "R2", "keys = \"B1 B2 B3 B4 B5 B6 B7 B8 B9 B10 B11 B12\", jumpers = [\"B6 B7\"]",
                        "R3", "keys = \"C1 C2 C3 C4 C5 C6 C7 C8 C9 C10 C11 C12\", lead = \"C6\"",
                        "R5", "keys = \"E1 E2 E3 E5 E6\", branches = [\"E3 E7 E8 E10\", \"E8 E11\"]",
                        "C5", "keys = \"A5 B5 C5\", branches = [\"B5 D5 E5\"]",
                        "C8", "keys = \"A8 B8 C8 D8 E8\", lead = \"C8\", jumpers = [\"B8 C8\"]"),
                "");
    }

    /** Eight rows by sixteen columns, 128 keys. */
    public static Plan plain8x16() {
        return plain(Controllers.ATMEGA2560, 8, 16);
    }

    /** Six rows by thirteen columns, three positions missing: 75 keys. */
    public static Plan keys75() {
        return plan(Controllers.ATMEGA32U4, 6, 13, Set.of("F6", "F7", "F8"), Map.of(), "");
    }

    /** @param nets what to say of some nets instead of the keys in order */
    private static Plan plan(
            Controller controller, int rows, int columns, Set<String> holes, Map<String, String> nets, String heading) {
        Map<Integer, List<String>> onRow = new TreeMap<>();
        Map<Integer, List<String>> onColumn = new TreeMap<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                String key = (char) ('A' + row) + String.valueOf(column + 1);
                if (!holes.contains(key)) {
                    onRow.computeIfAbsent(row, any -> new ArrayList<>()).add(key);
                    onColumn.computeIfAbsent(column, any -> new ArrayList<>()).add(key);
                }
            }
        }
        List<String> pins = controller.pins().stream()
                .filter(pin -> controller.reserved(pin).isEmpty())
                .toList();
        String spare = pins.size() > rows + columns ? "spare = \"" + pins.get(rows + columns) + "\"\n" : "";
        StringBuilder text = new StringBuilder("name = \"" + rows + " by " + columns + "\"\ncontroller = \""
                + controller.name() + "\"\n" + heading + spare + "[rows]\n");
        onRow.forEach((row, keys) -> net(text, "R" + (row + 1), pins.get(row), keys, nets));
        text.append("[columns]\n");
        onColumn.forEach((column, keys) -> net(text, "C" + (column + 1), pins.get(rows + column), keys, nets));
        PlanFile file = PlanReader.read(text.toString(), "grid.toml");
        return file.plan().orElseThrow(() -> new AssertionError(file.problems() + "\n" + text));
    }

    private static void net(
            StringBuilder text, String name, String pin, List<String> keys, Map<String, String> otherwise) {
        String says = otherwise.getOrDefault(name, "keys = \"" + String.join(" ", keys) + "\"");
        text.append(name + " = { pin = \"" + pin + "\", " + says + " }\n");
    }
}
