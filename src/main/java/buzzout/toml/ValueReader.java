package buzzout.toml;

import java.util.ArrayList;
import java.util.List;

/** Reads names and values. */
final class ValueReader {
    private final Cursor in;
    private final List<Slip> slips;
    private int depth;
    private int braces;

    /** @param slips takes what is set twice, which is no reason to stop */
    ValueReader(Cursor in, List<Slip> slips) {
        this.in = in;
        this.slips = slips;
    }

    boolean isWithinBrackets() {
        return depth > 0;
    }

    void leaveBrackets() {
        depth = 0;
    }

    /** A name, or several with points between them. */
    List<Name> names(String todo) throws Stumble {
        List<Name> names = new ArrayList<>();
        do {
            if (names.size() == Toml.MOST_NESTED) {
                throw tooDeep();
            }
            in.passBlanks();
            names.add(name(todo));
            in.passBlanks();
        } while (in.passes("."));
        return names;
    }

    private Name name(String todo) throws Stumble {
        Spot at = in.spot();
        if (in.here() == '"' || in.here() == '\'') {
            return new Name(TextReader.line(in).text(), at);
        }
        String name = in.ahead(Cursor::isBare);
        if (name.isEmpty()) {
            throw in.unexpected("a name", todo);
        }
        in.next(name.length());
        return new Name(name, at);
    }

    /** The value of a setting, put into a table. */
    void setting(List<Name> names, OpenTable into, int section) throws Stumble {
        if (!in.passes("=")) {
            throw in.unexpected("=", "write a setting as name = value");
        }
        in.passBlanks();
        Value value = value();
        try {
            OpenTable table = into;
            for (Name name : names.subList(0, names.size() - 1)) {
                table = table.pointed(name, section);
            }
            table.set(names.get(names.size() - 1), value);
        } catch (Stumble twice) {
            slips.add(twice.slip());
        }
    }

    private Value value() throws Stumble {
        return switch (in.here()) {
            case '"', '\'' -> TextReader.any(in);
            case '[' -> list();
            case '{' -> table();
            default -> PlainValue.read(in);
        };
    }

    private Value list() throws Stumble {
        Spot at = in.spot();
        enter();
        List<Value> values = new ArrayList<>();
        in.passSpace();
        while (!in.passes("]")) {
            values.add(value());
            in.passSpace();
            if (in.here() != ']' && !in.passes(",")) {
                throw in.unexpected("a comma or ]", "put commas between the values and close the bracket");
            }
            in.passSpace();
        }
        depth--;
        return new Value.Listed(values, at);
    }

    private Value table() throws Stumble {
        OpenTable table = OpenTable.at(in.spot());
        enter();
        // Sections under headers count upwards.
        int section = --braces;
        in.passSpace();
        while (!in.passes("}")) {
            setting(names("put a setting there, or close the brace"), table, section);
            in.passSpace();
            if (in.here() != '}' && !in.passes(",")) {
                throw in.unexpected("a comma or }", "put commas between the settings and close the brace");
            }
            in.passSpace();
        }
        depth--;
        return table.value();
    }

    private void enter() throws Stumble {
        if (depth == Toml.MOST_NESTED) {
            throw tooDeep();
        }
        depth++;
        in.next();
    }

    private Stumble tooDeep() {
        return Stumble.over(
                in.spot(), "more than " + Toml.MOST_NESTED + " lists and tables within each other", "take some out");
    }
}
