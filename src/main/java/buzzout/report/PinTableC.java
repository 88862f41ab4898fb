package buzzout.report;

import buzzout.plan.NetKind;
import buzzout.report.PinTable.Lead;
import buzzout.report.PinTable.Seat;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A pin table as a C header: format {@code buzzout-pins}, version 1, as PIN-TABLE.md describes it. */
public final class PinTableC {
    private static final int LONGEST_PREFIX = 40;

    private final PinTable table;
    private final String prefix;
    private final String macros;

    private PinTableC(PinTable table) {
        this.table = table;
        this.prefix = prefix(table.plan().name());
        this.macros = prefix.toUpperCase(Locale.ROOT);
    }

    /** The whole header. Names from the plan stand in it only as escaped string literals. */
    public static String of(PinTable table) {
        return new PinTableC(table).header();
    }

    private String header() {
        return String.format(
                Locale.ROOT,
                """
                /* Pins and keys of one board. Format %s, version %d; `buzzout format pins` describes it.
                   %s */
                #ifndef %s_PINS_H
                #define %s_PINS_H

                #define %s_ROWS %d
                #define %s_COLUMNS %d
                #define %s_KEYS %d
                #define %s_STRIPE_FACES_ROW %d

                struct %s_lead {
                    const char *net;
                    const char *port;     /* the letters of the pin's name */
                    unsigned char number; /* the number at its end */
                    unsigned char proven;
                };

                struct %s_key {
                    const char *name;
                    const char *place;   /* ISO/IEC 9995-1, or "" */
                    unsigned char row;
                    unsigned char column;
                    unsigned char usage; /* USB HID page 7, or 0 */
                    unsigned char proven;
                };

                static const char %s_name[] = %s;

                static const struct %s_lead %s_rows[%s_ROWS] = {
                %s};

                static const struct %s_lead %s_columns[%s_COLUMNS] = {
                %s};

                static const struct %s_key %s_keys[%s_KEYS] = {
                %s};

                #endif
                """,
                PinTableJson.FORMAT,
                PinTableJson.VERSION,
                table.remark(),
                macros,
                macros,
                macros,
                table.rows().size(),
                macros,
                table.columns().size(),
                macros,
                table.keys().size(),
                macros,
                table.plan().stripe() == NetKind.ROW ? 1 : 0,
                prefix,
                prefix,
                prefix,
                literal(table.plan().name()),
                prefix,
                prefix,
                macros,
                leads(table.rows()),
                prefix,
                prefix,
                macros,
                leads(table.columns()),
                prefix,
                prefix,
                macros,
                table.keys().stream().map(PinTableC::entry).collect(Collectors.joining()));
    }

    private static String leads(List<Lead> leads) {
        return leads.stream().map(PinTableC::entry).collect(Collectors.joining());
    }

    private static String entry(Lead lead) {
        String pin = lead.net().pin();
        String port = pin.replaceAll("[0-9]+$", "");
        return "    {" + literal(lead.net().name()) + ", " + literal(port) + ", " + pin.substring(port.length()) + ", "
                + (lead.proven() ? 1 : 0) + "},\n";
    }

    private static String entry(Seat seat) {
        return "    {" + literal(seat.key().name()) + ", "
                + literal(seat.place().orElse("")) + ", " + seat.row() + ", "
                + seat.column() + ", "
                + String.format(Locale.ROOT, "0x%02X", seat.usage().orElse(0)) + ", "
                + (seat.proven() ? 1 : 0) + "},\n";
    }

    /** A C string literal in UTF-8; question marks are escaped too, for two of them could begin a trigraph. */
    static String literal(String text) {
        StringBuilder literal = new StringBuilder("\"");
        for (byte each : text.getBytes(StandardCharsets.UTF_8)) {
            int code = each & 0xFF;
            if (code == '"' || code == '\\' || code == '?') {
                literal.append('\\').append((char) code);
            } else if (code >= ' ' && code <= '~') {
                literal.append((char) code);
            } else {
                literal.append(String.format(Locale.ROOT, "\\%03o", code));
            }
        }
        return literal.append('"').toString();
    }

    /** What every name of the header begins with: the plan's name in lower-case ASCII letters, digits and underscores. */
    private static String prefix(String name) {
        String plain =
                name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("^_+|_+$", "");
        String cut = plain.substring(0, Math.min(LONGEST_PREFIX, plain.length()));
        return cut.isEmpty() || Character.isDigit(cut.charAt(0)) ? "board_" + cut : cut;
    }
}
