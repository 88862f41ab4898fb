package buzzout.cli;

import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Option;
import buzzout.line.Usage;
import buzzout.plan.Controller;
import buzzout.plan.Controllers;
import buzzout.plan.NewPlan;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

final class NewCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Print a commented plan to start from.";

    private static final Pattern ROWS_AND_COLUMNS = Pattern.compile("(\\d{1,3})[xX](\\d{1,3})");

    private static final Operand SIZE = Operand.of("ROWSxCOLUMNS", "The board's size, such as 4x12.");
    private static final Option CONTROLLER = Option.of(
            "--controller", "NAME", "The microcontroller: ATmega32U4 unless you say ATmega328P, ATmega2560 or RP2040.");

    static final Usage USAGE = Usage.of("buzzout new", IN_SHORT, "For example: buzzout new 4x12 > mine.toml")
            .taking(SIZE)
            .with(Common.OPTIONS)
            .with(CONTROLLER);

    private final Surroundings surroundings;
    private final String size;
    private final String controller;

    NewCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        size = given.word(SIZE);
        controller = given.value(CONTROLLER).orElse("ATmega32U4");
    }

    @Override
    public int run() throws Failure {
        Matcher matcher = ROWS_AND_COLUMNS.matcher(size);
        if (!matcher.matches()) {
            throw new Failure(
                    Status.USAGE, "\"" + size + "\" is no size of a board; write rows and columns such as 4x12.");
        }
        int rows = Integer.parseInt(matcher.group(1));
        int columns = Integer.parseInt(matcher.group(2));
        Controller chosen = Controllers.named(controller)
                .orElseThrow(() -> new Failure(
                        Status.USAGE,
                        "Buzzout does not know the controller \"" + controller + "\"; "
                                + Controllers.nearest(controller)
                                        .map(near -> "did you mean " + near + "? It")
                                        .orElse("it")
                                + " knows "
                                + Controllers.ALL.stream().map(Controller::name).collect(Collectors.joining(", "))
                                + "."));
        Optional<String> obstacle = NewPlan.obstacle(rows, columns, chosen);
        if (obstacle.isPresent()) {
            throw new Failure(Status.USAGE, Sentence.of(obstacle.get()));
        }
        surroundings.console().say(NewPlan.text(rows, columns, chosen));
        return Status.FINE;
    }
}
