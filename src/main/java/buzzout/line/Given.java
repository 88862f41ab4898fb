package buzzout.line;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was given to a command, and is all that it needs.
 *
 * @param words by the names of options and the labels of operands: their values, or for what has none the name itself
 */
public record Given(Map<String, List<String>> words) implements Reading {
    public Given {
        Map<String, List<String>> copy = new HashMap<>();
        for (Map.Entry<String, List<String>> each : words.entrySet()) {
            copy.put(each.getKey(), List.copyOf(each.getValue()));
        }
        words = Map.copyOf(copy);
    }

    public boolean has(Flag flag) {
        return words.containsKey(flag.name());
    }

    /** Yes, no or nothing. */
    public Optional<Boolean> answer(Either either) {
        return first(either.name()).map(either.name()::equals);
    }

    /** Always there for one that is needed. */
    public Optional<String> value(Option option) {
        return first(option.name());
    }

    public List<String> values(Option option) {
        return words.getOrDefault(option.name(), List.of());
    }

    /** The word of an operand that must be there. */
    public String word(Operand operand) {
        return optional(operand).orElseThrow();
    }

    /** The word of an operand that may be left out. */
    public Optional<String> optional(Operand operand) {
        return first(operand.label());
    }

    public List<String> words(Operand operand) {
        return words.getOrDefault(operand.label(), List.of());
    }

    private Optional<String> first(String name) {
        List<String> values = words.getOrDefault(name, List.of());
        return values.isEmpty() ? Optional.empty() : Optional.of(values.get(0));
    }
}
