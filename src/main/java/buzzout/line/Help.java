package buzzout.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What a command takes, told to a person on 80 columns. */
public final class Help {
    private static final Comparator<Named> BY_NAME = Comparator.comparing(Named::name);

    /** As wide as a letter with what parts it from the name. */
    private static final String NO_LETTER = "    ";

    private Help() {}

    /** A synopsis, the description, then operands and options, each with what it means. */
    public static String of(Usage usage) {
        StringBuilder text = new StringBuilder();
        String start = "Usage: " + usage.name() + " ";
        text.append(Paragraph.of(start, synopsis(usage), start.length()));
        for (String paragraph : usage.description()) {
            text.append(Paragraph.of("", paragraph, 0));
        }
        return text.append(Columns.of(rows(usage), 3)).toString();
    }

    /** Letters without a value share a dash; then what takes no value, what takes one, what takes many. */
    private static String synopsis(Usage usage) {
        StringBuilder letters = new StringBuilder();
        List<String> flags = new ArrayList<>();
        List<String> single = new ArrayList<>();
        List<String> many = new ArrayList<>();
        for (Named named : sorted(usage)) {
            Optional<String> letter = named.letter();
            if (named instanceof Option option) {
                (option.times().many() ? many : single).add(inSynopsis(option));
            } else if (letter.isPresent()) {
                letters.append(letter.get().substring(1));
            } else {
                flags.add("[" + named.shown() + "]");
            }
        }
        List<String> all = new ArrayList<>();
        all.add("[-" + letters + "]");
        all.addAll(flags);
        all.addAll(single);
        all.addAll(many);
        for (Operand operand : usage.operands()) {
            all.add(operand.shown());
        }
        return String.join(" ", all);
    }

    private static String inSynopsis(Option option) {
        String shown = option.letter().orElse(option.name()) + option.valueShown();
        return (option.times().needed() ? shown : "[" + shown + "]")
                + (option.times().many() ? "..." : "");
    }

    private static List<Columns.Row> rows(Usage usage) {
        List<Columns.Row> rows = new ArrayList<>();
        for (Operand operand : usage.operands()) {
            if (!operand.description().isEmpty()) {
                rows.add(new Columns.Row(NO_LETTER + operand.shown(), operand.description()));
            }
        }
        for (Named option : sorted(usage)) {
            String letter = option.letter().map(each -> each + ", ").orElse(NO_LETTER);
            rows.add(new Columns.Row(letter + option.shown(), option.description()));
        }
        return rows;
    }

    private static List<Named> sorted(Usage usage) {
        List<Named> sorted = new ArrayList<>(usage.options());
        sorted.sort(BY_NAME);
        return sorted;
    }
}
