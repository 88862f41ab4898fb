package buzzout.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a command is and what it takes.
 *
 * @param name as it is called, with the program's before it
 * @param description paragraphs
 */
public record Usage(String name, List<String> description, List<Operand> operands, List<Named> options) {
    public Usage {
        description = List.copyOf(description);
        operands = List.copyOf(operands);
        options = List.copyOf(options);
    }

    /** A command that takes nothing but {@code --help}. */
    public static Usage of(String name, String... description) {
        return new Usage(name, List.of(description), List.of(), List.of(Flag.HELP));
    }

    /** The same with operands, in this order. */
    public Usage taking(Operand... more) {
        return new Usage(name, description, joined(operands, List.of(more)), options);
    }

    /** The same with options. */
    public Usage with(Named... more) {
        return with(List.of(more));
    }

    /** The same with options. */
    public Usage with(List<Named> more) {
        return new Usage(name, description, operands, joined(options, more));
    }

    /** The names of all options, with their dashes; no letters. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        for (Named option : options) {
            names.add(option.name());
            if (option instanceof Either either) {
                names.add(either.no());
            }
        }
        return names;
    }

    Optional<Named> called(String word) {
        for (Named option : options) {
            if (option.isCalled(word)) {
                return Optional.of(option);
            }
        }
        return Optional.empty();
    }

    private static <T> List<T> joined(List<T> first, List<T> second) {
        List<T> joined = new ArrayList<>(first);
        joined.addAll(second);
        return joined;
    }
}
