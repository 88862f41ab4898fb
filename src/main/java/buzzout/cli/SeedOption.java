package buzzout.cli;

import buzzout.line.Given;
import buzzout.line.Option;

/** The option of commands that simulate a board. */
final class SeedOption {
    static final Option SEED = Option.of("--seed", "N", "How contacts bounce; 1 unless given.");

    private SeedOption() {}

    static long seed(Given given) throws Misuse {
        String text = given.value(SEED).orElse("1");
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            throw Misuse.of(SEED, "\"" + text + "\" is not a whole number");
        }
    }
}
