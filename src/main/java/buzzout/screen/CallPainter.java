package buzzout.screen;

import buzzout.session.Session;
import java.util.List;
import java.util.Optional;

/** The key that a roll call calls, in letters as large as there is room for. */
final class CallPainter {
    /** A blank row keeps it apart from the board. */
    private static final int APART = 1;

    /** Dots of four columns and two rows, of two and one, of one and one. */
    private static final List<Dot> DOTS = List.of(new Dot(4, 2), new Dot(2, 1), new Dot(1, 1));

    /** With two dots to a row, or where letters have no shape, with the name spaced out on a bar. */
    private static final int COMPACT_ROWS = 3;

    private record Dot(int columns, int rows) {
        int height() {
            return rows * BlockLetters.HEIGHT + APART;
        }
    }

    private CallPainter() {}

    /** The rows that it takes where so many are to spare; none when no key is called or there is no room. */
    static int rows(View view, int columns, int spare) {
        if (!view.isPressing() || view.session().toCall().isEmpty()) {
            return 0;
        }
        // The largest that fits the longest name, so that the board stays where it is from call to call.
        int widest = view.plan().keys().stream()
                .mapToInt(key -> BlockLetters.of(key.spoken())
                        .map(rows -> rows[0].length())
                        .orElse(0))
                .max()
                .orElse(0);
        return DOTS.stream()
                .filter(dot -> dot.height() <= spare && dot.columns() * widest + 2 <= columns)
                .map(Dot::height)
                .findFirst()
                .orElse(spare >= COMPACT_ROWS - 1 ? COMPACT_ROWS : 0);
    }

    static void paint(View view, Pen pen) {
        Session session = view.session();
        if (pen.rows() == 0 || session.called().isEmpty()) {
            return;
        }
        String name = view.plan().keys().get(session.called().getAsInt()).spoken();
        Optional<String[]> letters = BlockLetters.of(name);
        Optional<Dot> dot =
                DOTS.stream().filter(each -> each.height() == pen.rows()).findFirst();
        if (letters.isEmpty() || (dot.isEmpty() && pen.ascii())) {
            paintBar(name, pen);
        } else if (dot.isPresent()) {
            paintDots(letters.get(), dot.get(), pen);
        } else {
            paintHalves(letters.get(), pen);
        }
    }

    private static void paintDots(String[] letters, Dot dot, Pen pen) {
        String full = (pen.ascii() ? "#" : "█").repeat(dot.columns());
        for (int row = 0; row < letters.length; row++) {
            String line = letters[row].replace(".", " ".repeat(dot.columns())).replace("#", full);
            for (int part = 0; part < dot.rows(); part++) {
                putCentred(line, row * dot.rows() + part, Ink.STRONG, pen);
            }
        }
    }

    /** A cell is about twice as high as wide, so two dots stand in each. */
    private static void paintHalves(String[] letters, Pen pen) {
        for (int row = 0; row < COMPACT_ROWS; row++) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < letters[0].length(); column++) {
                boolean upper = letters[2 * row].charAt(column) == '#';
                boolean lower = 2 * row + 1 < letters.length && letters[2 * row + 1].charAt(column) == '#';
                line.append(upper ? lower ? '█' : '▀' : lower ? '▄' : ' ');
            }
            putCentred(line.toString(), row, Ink.STRONG, pen);
        }
    }

    private static void paintBar(String name, Pen pen) {
        String spaced = "    " + String.join(" ", pen.clean(name).split("")) + "    ";
        int middle = (pen.rows() - 1) / 2;
        for (int row = middle - 1; row <= middle + 1; row++) {
            putCentred(row == middle ? spaced : " ".repeat(pen.width(spaced)), row, Ink.WAITING, pen);
        }
    }

    private static void putCentred(String line, int row, Ink ink, Pen pen) {
        pen.put(Math.max(0, (pen.columns() - pen.width(line)) / 2), row, line, ink);
    }
}
