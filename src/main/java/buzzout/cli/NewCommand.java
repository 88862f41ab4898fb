package buzzout.cli;

import buzzout.plan.Controller;
import buzzout.plan.Controllers;
import buzzout.plan.NewPlan;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "new",
        description = {NewCommand.IN_SHORT, "For example: buzzout new 4x12 > mine.toml"})
final class NewCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT = "Print a commented plan to start from.";

    private static final Pattern SIZE = Pattern.compile("(\\d{1,3})[xX](\\d{1,3})");

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "ROWSxCOLUMNS", description = "The board's size, such as 4x12.")
    private String size = "";

    @Option(
            names = "--controller",
            paramLabel = "NAME",
            defaultValue = "ATmega32U4",
            description = "The microcontroller: ATmega32U4 unless you say ATmega328P, ATmega2560 or RP2040.")
    private String controller = "";

    NewCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        Matcher matcher = SIZE.matcher(size);
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
