package buzzout.cli;

import buzzout.journal.LogNotWritten;
import buzzout.line.Columns.Row;
import buzzout.line.Given;
import buzzout.line.Help;
import buzzout.line.Reading;
import buzzout.line.Usage;
import buzzout.plan.Nearest;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Carries out one command line. */
final class Program {
    private final Surroundings surroundings;

    private Program(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** Does what the arguments ask and returns the exit status; writes to the surroundings' console only. */
    static int run(Surroundings surroundings, String... arguments) {
        try {
            return new Program(surroundings).run(List.of(arguments));
        } catch (Failure | IOException | InterruptedException | RuntimeException | Error e) {
            // What cannot be expected, such as a full memory, ends in a sentence as well.
            return failed(surroundings, e);
        }
    }

    private int run(List<String> words) throws Failure, IOException, InterruptedException {
        if (words.isEmpty()) {
            surroundings.console().say(Overview.FIRST_STEPS);
            return Status.FINE;
        }
        Optional<Commands.Known> known = Commands.named(words.get(0));
        return known.isPresent() ? run(known.get(), words.subList(1, words.size())) : withoutCommand(words);
    }

    private int run(Commands.Known known, List<String> words) throws Failure, IOException, InterruptedException {
        Reading reading = Reading.of(known.usage(), words);
        if (reading instanceof Given given) {
            Command command;
            try {
                command = known.maker().made(surroundings, given);
            } catch (Misuse e) {
                return refused(known.usage(), e.sentence());
            }
            return command.run();
        }
        if (reading instanceof Reading.HelpAsked) {
            surroundings.console().say(Help.of(known.usage()));
            return Status.FINE;
        }
        return refused(known.usage(), sentence(known.usage(), reading));
    }

    private int withoutCommand(List<String> words) {
        Reading reading = Reading.of(Overview.USAGE, words);
        if (reading instanceof Reading.HelpAsked) {
            surroundings.console().say(Overview.help());
            return Status.FINE;
        }
        if (reading instanceof Given given && given.has(Overview.VERSION)) {
            surroundings.console().say("Buzzout " + Version.NUMBER);
            return Status.FINE;
        }
        String first = words.get(0);
        if (first.startsWith("-")) {
            return refused(Overview.USAGE, sentence(Overview.USAGE, reading));
        }
        List<String> names = Commands.IN_SHORT.stream().map(Row::word).toList();
        return refused(Overview.USAGE, "There is no command \"" + first + "\"" + meant(first, names));
    }

    private static String sentence(Usage usage, Reading reading) {
        if (reading instanceof Reading.NoSuchOption unknown) {
            return "There is no option " + unknown.word() + " here" + meant(unknown.word(), usage.names());
        }
        // Words were given that are no option, such as a dash, before any command.
        return reading instanceof Reading.Refused refused ? refused.sentence() : "A command comes first.";
    }

    /** Ends a sentence about a name with the one that was probably meant. */
    private static String meant(String name, List<String> names) {
        String dashes = name.startsWith("--") ? "--" : "";
        List<String> bare = new ArrayList<>();
        for (String each : names) {
            bare.add(each.substring(dashes.length()));
        }
        return Nearest.to(name.substring(dashes.length()), bare)
                .map(near -> "; did you mean " + dashes + near + "?")
                .orElse(".");
    }

    private int refused(Usage usage, String sentence) {
        surroundings.console().complain(sentence + " `" + usage.name() + " --help` shows what it takes.");
        return Status.USAGE;
    }

    /** Says what went wrong, and gives the exit status. */
    static int failed(Surroundings surroundings, Throwable exception) {
        if (exception instanceof Failure failure) {
            failure.sentences().forEach(surroundings.console()::complain);
            return failure.status();
        }
        Optional<LogNotWritten> notWritten = logNotWritten(exception);
        if (notWritten.isPresent()) {
            surroundings.console().complain(Sentence.of(notWritten.get().sentence()));
            return Status.NO_LOG;
        }
        Throwable cause = exception.getCause();
        Throwable first = exception instanceof SessionBroken && cause != null ? cause : exception;
        String log = exception instanceof SessionBroken broken
                ? "What came before is in " + broken.log() + "; `buzzout run --resume " + broken.log()
                        + "` goes on with it. "
                : "";
        surroundings.console().complain(broke(exception, first, log));
        return Status.INTERNAL;
    }

    /** What to say where the program failed. */
    static String broke(Throwable exception) {
        return broke(exception, exception, "");
    }

    private static String broke(Throwable exception, Throwable first, String between) {
        return "The program failed (" + first.getClass().getSimpleName() + "). " + between + whereTheTraceIs(exception);
    }

    private static Optional<LogNotWritten> logNotWritten(Throwable thrown) {
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            if (each instanceof LogNotWritten notWritten) {
                return Optional.of(notWritten);
            }
        }
        return Optional.empty();
    }

    private static String whereTheTraceIs(Throwable exception) {
        StringWriter trace = new StringWriter();
        exception.printStackTrace(new PrintWriter(trace, true));
        try {
            Path file = Files.createTempFile("buzzout-failure-", ".txt");
            Files.writeString(file, "Buzzout " + Version.NUMBER + "\n" + trace);
            return "Please report it together with " + file + ", which holds the details.";
        } catch (IOException e) {
            return "The details could not be written to a file: " + e.getMessage() + ".";
        }
    }
}
