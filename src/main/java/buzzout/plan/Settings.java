package buzzout.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tomlj.TomlArray;
import org.tomlj.TomlElement;
import org.tomlj.TomlEntry;
import org.tomlj.TomlKeyValue;
import org.tomlj.TomlTable;
import org.tomlj.TomlValue;

/** One table of the file, each of its settings read as the type that the plan needs. */
final class Settings {
    private final Source source;
    private final Problems problems;
    private final Spot at;
    private final String where;
    private final Map<String, TomlKeyValue> entries = new LinkedHashMap<>();

    /** @param where such as {@code R1}, or empty for the whole file */
    Settings(TomlTable table, Spot at, String where, Source source, Problems problems) {
        this.source = source;
        this.problems = problems;
        this.at = at;
        this.where = where;
        for (String name : table.keySet()) {
            TomlKeyValue entry = table.entry(List.of(name));
            if (entry != null) {
                entries.put(name, entry);
            }
        }
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
            TomlKeyValue entry = entries.remove(name.text());
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
        return entries.entrySet().stream()
                .map(entry -> new Word(entry.getKey(), place(entry.getValue())))
                .toList();
    }

    boolean has(String name) {
        return entries.containsKey(name);
    }

    Optional<Text> text(String name) {
        Optional<TomlValue> value = value(name);
        value.filter(is -> !is.isString())
                .ifPresent(is -> problems.error(place(is), wrong(name, is, "text in quotes")));
        return value.filter(TomlValue::isString).map(this::text);
    }

    OptionalDouble number(String name) {
        Optional<TomlValue> value = value(name);
        if (value.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (value.get().isLong()) {
            return OptionalDouble.of((double) value.get().getLong());
        }
        if (value.get().isDouble()) {
            return OptionalDouble.of(value.get().getDouble());
        }
        problems.error(place(value.get()), wrong(name, value.get(), "a number"));
        return OptionalDouble.empty();
    }

    /** A text, or a list of texts. */
    List<Text> texts(String name) {
        Optional<TomlValue> value = value(name);
        if (value.isEmpty()) {
            return List.of();
        }
        if (value.get().isString()) {
            return List.of(text(value.get()));
        }
        if (!value.get().isArray()) {
            problems.unread(place(value.get()), wrong(name, value.get(), "text in quotes, or a list of such texts"));
            return List.of();
        }
        List<Text> texts = new ArrayList<>();
        TomlArray array = value.get().getArray();
        for (int i = 0; i < array.size(); i++) {
            TomlValue element = array.entry(i).value();
            if (element.isString()) {
                texts.add(text(element));
            } else {
                problems.unread(
                        place(element),
                        in() + Visible.quoted(name) + " lists " + typeOf(element) + "; make it text in quotes");
            }
        }
        return texts;
    }

    /** @param wanted what to make it where it is no table */
    Optional<Settings> table(String name, String wanted) {
        return Optional.ofNullable(entries.get(name)).flatMap(entry -> {
            if (!entry.value().isTable()) {
                problems.unread(place(entry.value()), wrong(name, entry.value(), wanted));
                return Optional.empty();
            }
            return Optional.of(new Settings(entry.value().getTable(), place(entry), name, source, problems));
        });
    }

    /** Where a setting's value stands, or else the table. */
    Spot at(String name) {
        return value(name).map(Settings::place).orElse(at);
    }

    private Optional<TomlValue> value(String name) {
        return Optional.ofNullable(entries.get(name)).map(TomlEntry::value);
    }

    private Text text(TomlValue value) {
        return source.text(value.getString(), place(value));
    }

    private String wrong(String name, TomlValue value, String wanted) {
        return in() + Visible.quoted(name) + " is " + typeOf(value) + "; make it " + wanted;
    }

    private static Spot place(TomlElement element) {
        return Spot.of(element.position());
    }

    private String in() {
        return where.isEmpty() ? "" : Visible.of(where) + ": ";
    }

    private static String typeOf(TomlValue value) {
        if (value.isString()) {
            return "text";
        }
        if (value.isLong() || value.isDouble()) {
            return "a number";
        }
        if (value.isBoolean()) {
            return "true or false";
        }
        if (value.isArray()) {
            return "a list";
        }
        return value.isTable() ? "a table" : "a date or time";
    }
}
