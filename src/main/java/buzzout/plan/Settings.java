package buzzout.plan;

import buzzout.toml.Spot;
import buzzout.toml.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One table of the file, each of its settings read as the type that the plan needs. */
final class Settings {
    private final Problems problems;
    private final Spot at;
    private final String where;
    private final Map<String, Value.Setting> entries;

    /** @param where such as {@code R1}, or empty for the whole file */
    Settings(Value.Table table, Spot at, String where, Problems problems) {
        this.problems = problems;
        this.at = at;
        this.where = where;
        entries = new LinkedHashMap<>(table.settings());
    }

    /** Tells of settings that are not known, and reads a misspelt one as the one that was meant. */
    Settings known(String... names) {
        for (Word name : names()) {
            if (List.of(names).contains(name.text())) {
                continue;
            }
            List<String> open =
                    List.of(names).stream().filter(each -> !has(each)).toList();
            problems.error(
                    name.at(),
                    in() + name.quoted() + " is not a setting; "
                            + problems.hint(name.text(), open, "take it out; known are " + String.join(", ", names)));
            Value.Setting entry = entries.remove(name.text());
            if (entry != null) {
                problems.nearest(name.text(), open).ifPresent(meant -> entries.put(meant, entry));
            }
        }
        return this;
    }

    Spot at() {
        return at;
    }

    /** The names set, in the order of the file. */
    List<Word> names() {
        List<Word> names = new ArrayList<>();
        entries.forEach((name, setting) -> names.add(new Word(name, setting.at())));
        return names;
    }

    boolean has(String name) {
        return entries.containsKey(name);
    }

    Optional<Text> text(String name) {
        Optional<Value> value = value(name);
        if (value.isPresent() && !(value.get() instanceof Value.Text)) {
            problems.error(value.get().at(), wrong(name, value.get(), "text in quotes"));
        }
        return value.flatMap(Settings::text);
    }

    OptionalDouble number(String name) {
        Optional<Value> value = value(name);
        if (value.isPresent() && !(value.get() instanceof Value.Quantity)) {
            problems.error(value.get().at(), wrong(name, value.get(), "a number"));
        }
        return value.isPresent() && value.get() instanceof Value.Quantity quantity
                ? OptionalDouble.of(quantity.number())
                : OptionalDouble.empty();
    }

    /** A text, or a list of texts. */
    List<Text> texts(String name) {
        Optional<Value> value = value(name);
        if (value.isEmpty()) {
            return List.of();
        }
        if (value.get() instanceof Value.Listed list) {
            List<Text> texts = new ArrayList<>();
            for (Value element : list.values()) {
                Optional<Text> text = text(element);
                text.ifPresent(texts::add);
                if (text.isEmpty()) {
                    problems.unread(
                            element.at(),
                            in() + Visible.quoted(name) + " lists " + element.kind() + "; make it text in quotes");
                }
            }
            return texts;
        }
        Optional<Text> text = text(value.get());
        if (text.isEmpty()) {
            problems.unread(value.get().at(), wrong(name, value.get(), "text in quotes, or a list of such texts"));
        }
        return text.map(List::of).orElse(List.of());
    }

    /** @param wanted what to make it where it is no table */
    Optional<Settings> table(String name, String wanted) {
        Optional<Value.Setting> entry = Optional.ofNullable(entries.get(name));
        if (entry.isPresent() && !(entry.get().value() instanceof Value.Table)) {
            Value value = entry.get().value();
            problems.unread(value.at(), wrong(name, value, wanted));
        }
        return entry.isPresent() && entry.get().value() instanceof Value.Table table
                ? Optional.of(new Settings(table, entry.get().at(), name, problems))
                : Optional.empty();
    }

    /** Where a setting's value stands, or else the table. */
    Spot at(String name) {
        return value(name).map(Value::at).orElse(at);
    }

    private Optional<Value> value(String name) {
        return Optional.ofNullable(entries.get(name)).map(Value.Setting::value);
    }

    private static Optional<Text> text(Value value) {
        return value instanceof Value.Text text
                ? Optional.of(new Text(text.text(), text.spots(), text.at()))
                : Optional.empty();
    }

    private String wrong(String name, Value value, String wanted) {
        return in() + Visible.quoted(name) + " is " + value.kind() + "; make it " + wanted;
    }

    private String in() {
        return where.isEmpty() ? "" : Visible.of(where) + ": ";
    }
}
