package buzzout.toml;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads a text as TOML. What it cannot read it tells of, and goes on behind it.
 *
 * <p>TOML 1.1, https://toml.io/en/v1.1.0, but for how deep it nests.
 */
public final class Toml {
    /** Tables, lists and parts of a name within each other, deeper than any file of ours. */
    public static final int MOST_NESTED = 8;

    private final Cursor in;
    private final ValueReader values;
    private final List<Slip> slips = new ArrayList<>();
    private final OpenTable root = OpenTable.at(Spot.START);
    private OpenTable current = root;
    private int section;
    private boolean whole = true;

    private Toml(String text) {
        in = new Cursor(text);
        values = new ValueReader(in, slips);
    }

    /**
     * What was read.
     *
     * @param slips in the order of the text
     * @param whole whether it is known of each setting in which table it stands: not where a header could not be read
     */
    public record File(Value.Table settings, List<Slip> slips, boolean whole) {
        public File {
            slips = List.copyOf(slips);
        }
    }

    /** Reads a text, whatever stands in it. */
    public static File read(String text) {
        Toml toml = new Toml(text);
        while (toml.in.here() != Cursor.END) {
            toml.line();
        }
        return new File(toml.root.value(), toml.slips, toml.whole);
    }

    private void line() {
        int first = in.line();
        try {
            in.passBlanks();
            if (in.here() == '[') {
                header();
            } else if (in.here() != '#' && !in.isAtLineEnd()) {
                setting();
            }
            in.passComment();
            if (!in.isAtLineEnd()) {
                throw in.unexpected("the end of the line", "begin a new line");
            }
            in.passLineEnd();
        } catch (Stumble stumble) {
            slips.add(stumble.slip());
            goOn(first);
        }
    }

    private void setting() throws Stumble {
        List<Name> names = values.names("begin the line with a setting's name, a [table] or a # comment");
        values.setting(names, current, section);
    }

    private void header() throws Stumble {
        Spot at = in.spot();
        section++;
        // Until the header is known to be good, what follows belongs nowhere.
        current = OpenTable.at(at);
        boolean wasWhole = whole;
        whole = false;
        boolean list = in.sees("[[");
        in.next(list ? 2 : 1);
        List<Name> names = new ArrayList<>();
        for (Name name : values.names("write a table's name between the brackets")) {
            names.add(new Name(name.text(), at));
        }
        if (!in.passes(list ? "]]" : "]")) {
            throw in.unexpected(list ? "]]" : "]", "close the bracket");
        }
        OpenTable table = root;
        for (Name name : names.subList(0, names.size() - 1)) {
            table = table.onTheWay(name);
        }
        Name last = names.get(names.size() - 1);
        current = list ? table.listed(last) : table.headed(last);
        whole = wasWhole;
    }

    /** Goes on after a slip: at the next line, or after an open bracket at the first that looks like a new setting. */
    private void goOn(int first) {
        if (values.isWithinBrackets() && in.line() > first && in.here() != Cursor.END) {
            in.returnToLineStart();
        } else {
            in.passLine();
        }
        while (values.isWithinBrackets() && !in.looksLikeASetting() && in.here() != Cursor.END) {
            in.passLine();
        }
        values.leaveBrackets();
    }
}
