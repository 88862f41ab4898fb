package buzzout.toml;

import java.util.List;
import java.util.stream.Collectors;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import org.tomlj.TomlValue;

/** Values on one line, each before the place where it begins: as this reader read them, or another. */
final class Written {
    private Written() {}

    static String of(Value value) {
        String written;
        if (value instanceof Value.Table table) {
            written = table.settings().entrySet().stream()
                    .map(each ->
                            quoted(each.getKey()) + "=" + of(each.getValue().value()))
                    .sorted()
                    .collect(Collectors.joining(", ", "{", "}"));
        } else if (value instanceof Value.Listed list) {
            written = list.values().stream().map(Written::of).collect(Collectors.joining(", ", "[", "]"));
        } else if (value instanceof Value.Text text) {
            written = quoted(text.text());
        } else if (value instanceof Value.Quantity quantity) {
            written = String.valueOf(quantity.number());
        } else if (value instanceof Value.Truth truth) {
            written = String.valueOf(truth.holds());
        } else {
            written = "moment";
        }
        return written;
    }

    static String of(TomlTable table) {
        return table.keySet().stream()
                .map(name -> quoted(name) + "=" + of(table.entry(List.of(name)).value()))
                .sorted()
                .collect(Collectors.joining(", ", "{", "}"));
    }

    private static String of(TomlArray array) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < array.size(); i++) {
            all.append(i == 0 ? "" : ", ").append(of(array.entry(i).value()));
        }
        return "[" + all + "]";
    }

    private static String of(TomlValue value) {
        if (value.isTable()) {
            return of(value.getTable());
        }
        if (value.isArray()) {
            return of(value.getArray());
        }
        if (value.isString()) {
            return quoted(value.getString());
        }
        if (value.isLong()) {
            return String.valueOf((double) value.getLong());
        }
        if (value.isDouble()) {
            return String.valueOf(value.getDouble());
        }
        return value.isBoolean() ? String.valueOf(value.getBoolean()) : "moment";
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + '"';
    }
}
