package buzzout.cli;

import buzzout.journal.LogNotWritten;
import buzzout.probe.SettleTime;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Carries out one command line. */
final class Program {
    private final Surroundings surroundings;

    private Program(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** Does what the arguments ask and returns the exit status; writes to the surroundings' console only. */
    static int run(Surroundings surroundings, String... arguments) {
        return new Program(surroundings).run(arguments);
    }

    private int run(String... arguments) {
        StringWriter help = new StringWriter();
        CommandLine line = BuzzoutCommand.commandLine(surroundings, arguments)
                .setOut(new PrintWriter(help, true))
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .registerConverter(long.class, new WholeNumber())
                .registerConverter(OffsetDateTime.class, new Time())
                .registerConverter(SettleTime.class, new Settle())
                .setUsageHelpLongOptionsMaxWidth(24)
                .setParameterExceptionHandler(new Refusing())
                .setExecutionExceptionHandler(new Failing());
        int status = status(line, arguments);
        if (!help.toString().isEmpty()) {
            surroundings.console().say(help.toString());
        }
        return status;
    }

    /** What is no exception of a kind that can be expected, such as a full memory, ends in a sentence as well. */
    private int status(CommandLine line, String... arguments) {
        try {
            return line.execute(arguments);
        } catch (RuntimeException | Error e) {
            return failed(surroundings, e);
        }
    }

    private int refused(ParameterException exception) {
        String name = exception.getCommandLine().getCommandSpec().qualifiedName();
        surroundings.console().complain(what(exception) + " `" + name + " --help` shows what it takes.");
        return Status.USAGE;
    }

    private static String what(ParameterException exception) {
        if (exception instanceof UnmatchedArgumentException unmatched) {
            String word = unmatched.getUnmatched().get(0);
            if (word.startsWith("-")) {
                return "There is no option " + word + " here.";
            }
            boolean command = !exception.getCommandLine().getSubcommands().isEmpty();
            return command ? "There is no command \"" + word + "\"." : "\"" + word + "\" is one word too many.";
        }
        String order = exception instanceof MissingParameterException
                        && exception.getCommandLine().getCommandSpec().findOption("--fault") != null
                ? " PLAN comes before --fault."
                : "";
        return Sentence.of(String.valueOf(exception.getMessage())) + order;
    }

    // Classes and no lambdas: a lambda keeps the interface that it is made for, and all that implement it, out of the
    // class-data archive, because picocli's interfaces are from before Java 6.

    private final class Refusing implements IParameterExceptionHandler {
        @Override
        public int handleParseException(ParameterException exception, String[] given) {
            return refused(exception);
        }
    }

    private final class Failing implements IExecutionExceptionHandler {
        @Override
        public int handleExecutionException(Exception exception, CommandLine command, ParseResult parsed) {
            return failed(surroundings, exception);
        }
    }

    private static final class WholeNumber implements ITypeConverter<Long> {
        @Override
        public Long convert(String text) {
            try {
                return Long.valueOf(text);
            } catch (NumberFormatException e) {
                throw new TypeConversionException("\"" + text + "\" is not a whole number");
            }
        }
    }

    private static final class Settle implements ITypeConverter<SettleTime> {
        @Override
        public SettleTime convert(String text) {
            return SettleTime.parse(text)
                    .orElseThrow(() -> new TypeConversionException(
                            "\"" + text + "\" is neither \"auto\" nor a number of microseconds from 1 to 1000"));
        }
    }

    private static final class Time implements ITypeConverter<OffsetDateTime> {
        @Override
        public OffsetDateTime convert(String text) {
            try {
                return OffsetDateTime.parse(text);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException("\"" + text + "\" is no time such as 2026-11-25T10:14:05+01:00");
            }
        }
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
        surroundings
                .console()
                .complain("The program failed (" + first.getClass().getSimpleName() + "). " + log
                        + whereTheTraceIs(exception));
        return Status.INTERNAL;
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
