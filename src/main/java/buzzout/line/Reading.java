package buzzout.line;

import java.util.List;

/** What the words of a command line come to. */
public sealed interface Reading permits Given, Reading.HelpAsked, Reading.NoSuchOption, Reading.Refused {
    /** {@code --help} is among them; whatever else is, wrong or not, does not matter then. */
    record HelpAsked() implements Reading {}

    /**
     * There is no option of that name.
     *
     * @param word the name, with its dashes
     */
    record NoSuchOption(String word) implements Reading {}

    /**
     * The command does not take these words.
     *
     * @param sentence what is wrong with the first that is
     */
    record Refused(String sentence) implements Reading {}

    /**
     * Reads the words behind a command's name. Options may stand anywhere among operands: {@code --name value}, {@code
     * --name=value}, {@code -n value}, {@code -n=value}, {@code -nvalue}; letters that take no value may share a dash.
     * Behind {@code --} all are operands.
     */
    static Reading of(Usage usage, List<String> words) {
        return new WordByWord(usage, words).read();
    }
}
