package buzzout.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A pin table as comma-separated values: format {@code buzzout-pins}, version 1, as PIN-TABLE.md describes it. */
public final class PinTableCsv {
    private static final String LINE_END = "\r\n"; // RFC 4180

    private PinTableCsv() {}

    public static String of(PinTable table) {
        Stream<List<String>> heading = Stream.of(List.of(
                "key",
                "row",
                "column",
                "row net",
                "column net",
                "row pin",
                "column pin",
                "usage",
                "place",
                "x",
                "y",
                "width",
                "state"));
        Stream<List<String>> keys = table.keys().stream().map(seat -> fields(table, seat));
        return Stream.concat(heading, keys)
                .map(fields -> fields.stream().map(PinTableCsv::quoted).collect(Collectors.joining(",")) + LINE_END)
                .collect(Collectors.joining());
    }

    private static List<String> fields(PinTable table, PinTable.Seat seat) {
        return List.of(
                seat.key().name(),
                Integer.toString(seat.row()),
                Integer.toString(seat.column()),
                table.plan().row(seat.key()).name(),
                table.plan().column(seat.key()).name(),
                table.plan().row(seat.key()).pin(),
                table.plan().column(seat.key()).pin(),
                seat.usage().isPresent()
                        ? String.format(Locale.ROOT, "%02X", seat.usage().getAsInt())
                        : "",
                seat.place().orElse(""),
                Double.toString(seat.key().place().x()),
                Double.toString(seat.key().place().y()),
                Double.toString(seat.key().place().width()),
                seat.state().word());
    }

    private static String quoted(String field) {
        boolean plain = field.chars().noneMatch(each -> each == '"' || each == ',' || each == '\r' || each == '\n');
        return plain ? field : '"' + field.replace("\"", "\"\"") + '"';
    }
}
