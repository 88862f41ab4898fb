package buzzout.line;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Goes once through the words of a command line. */
final class WordByWord {
    private static final String OPERANDS_ONLY = "--";

    private final Usage usage;
    private final List<String> words;
    private final Map<String, List<String>> given = new HashMap<>();
    private final List<String> operands = new ArrayList<>();
    private int next;

    WordByWord(Usage usage, List<String> words) {
        this.usage = usage;
        this.words = words;
    }

    Reading read() {
        if (isHelpAsked()) {
            return new Reading.HelpAsked();
        }
        while (next < words.size()) {
            String word = words.get(next);
            next++;
            if (word.equals(OPERANDS_ONLY)) {
                operands.addAll(words.subList(next, words.size()));
                next = words.size();
            } else if (!isName(word)) {
                operands.add(word);
            } else {
                Optional<Reading> obstacle = option(word);
                if (obstacle.isPresent()) {
                    return obstacle.get();
                }
            }
        }
        Optional<Reading> misplaced = placed();
        Optional<Reading> obstacle = misplaced.isPresent() ? misplaced : lacking();
        return obstacle.isPresent() ? obstacle.get() : new Given(given);
    }

    /** Before anything else is looked at, which may be why it is asked. */
    private boolean isHelpAsked() {
        for (String word : words) {
            if (word.equals(OPERANDS_ONLY)) {
                return false;
            }
            if (Flag.HELP.isCalled(word)) {
                return true;
            }
        }
        return false;
    }

    /** A negative number is none, nor is a dash alone. */
    private static boolean isName(String word) {
        return word.length() > 1 && word.charAt(0) == '-' && !Character.isDigit(word.charAt(1));
    }

    /** Takes an option, with the words that belong to it; gives what is wrong with it. */
    private Optional<Reading> option(String word) {
        boolean letter = !word.startsWith("--");
        int equals = word.indexOf('=');
        String name = letter ? word.substring(0, 2) : equals < 0 ? word : word.substring(0, equals);
        String rest = word.substring(name.length());
        if (Flag.HELP.isCalled(name)) {
            return Optional.of(new Reading.HelpAsked());
        }
        Optional<Named> found = usage.called(name);
        if (found.isEmpty()) {
            return Optional.of(new Reading.NoSuchOption(letter ? word : name));
        }
        Named option = found.get();
        boolean many = option instanceof Option named && named.times().many();
        if (!many && given.containsKey(option.name())) {
            return refused((option instanceof Either ? option.shown() : option.name()) + " is given twice.");
        }
        if (option instanceof Option named) {
            return values(named, name, rest);
        }
        given.put(option.name(), List.of(name));
        if (rest.isEmpty()) {
            return Optional.empty();
        }
        return letter && equals != 2 ? option("-" + rest) : refused(name + " takes no value.");
    }

    private Optional<Reading> values(Option option, String name, String rest) {
        List<String> values = given.computeIfAbsent(option.name(), fresh -> new ArrayList<>());
        if (!rest.isEmpty()) {
            values.add(rest.startsWith("=") ? rest.substring(1) : rest);
        } else if (isValueNext()) {
            values.add(words.get(next));
            next++;
        } else {
            return refused(name + " needs a value: " + name + "=" + option.label() + ".");
        }
        while (option.times().many() && isValueNext()) {
            values.add(words.get(next));
            next++;
        }
        return Optional.empty();
    }

    private boolean isValueNext() {
        return next < words.size() && !isName(words.get(next));
    }

    /** Gives each operand its words; gives what is wrong with them. */
    private Optional<Reading> placed() {
        int from = 0;
        for (Operand operand : usage.operands()) {
            int to = operand.times().many() ? operands.size() : Math.min(from + 1, operands.size());
            if (from == to && operand.times().needed()) {
                return refused(operand.label() + " is missing" + order() + ".");
            }
            given.put(operand.label(), operands.subList(from, to));
            from = to;
        }
        return from == operands.size()
                ? Optional.empty()
                : refused("\"" + operands.get(from) + "\" is one word too many.");
    }

    /** Where a missing operand may have gone. */
    private String order() {
        for (Named option : usage.options()) {
            if (option instanceof Option named && named.times().many() && given.containsKey(named.name())) {
                return "; it comes before " + named.name();
            }
        }
        return "";
    }

    private Optional<Reading> lacking() {
        for (Named option : usage.options()) {
            if (option instanceof Option named && named.times().needed() && !given.containsKey(named.name())) {
                return refused(named.shown() + " is missing.");
            }
        }
        return Optional.empty();
    }

    private static Optional<Reading> refused(String sentence) {
        return Optional.of(new Reading.Refused(sentence));
    }
}
