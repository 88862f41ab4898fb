package buzzout.cli;

import buzzout.line.Option;

/** A command does not take what it was given: a sentence for the person, behind which the command's help is named. */
final class Misuse extends Exception {
    private static final long serialVersionUID = 1;

    private final String sentence;

    Misuse(String sentence) {
        super(sentence);
        this.sentence = sentence;
    }

    /** It does not take the value of an option. */
    static Misuse of(Option option, String why) {
        return new Misuse(option.name() + ": " + why + ".");
    }

    String sentence() {
        return sentence;
    }
}
