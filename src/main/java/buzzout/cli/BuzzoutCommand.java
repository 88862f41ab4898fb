package buzzout.cli;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;

@Command(
        name = "buzzout",
        description = "Proves a hand-wired key matrix wire by wire and names the joint to repair.",
        synopsisSubcommandLabel = "COMMAND",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        exitCodeListHeading = "%nExit status:%n",
        exitCodeList = {
            "0:did its work and found nothing wrong",
            "1:the board has findings",
            "2:the command line or a file is not as it should be",
            "3:no probe answered",
            "4:the session log could not be written",
            "70:the program itself failed; it names a file with the details",
            "128+N:ended by signal N"
        },
        commandListHeading = "%nCommands:%n",
        footerHeading = "%n",
        footer = "`buzzout COMMAND --help` tells more about each.")
final class BuzzoutCommand implements Callable<Integer> {
    /** In the order of the help; the name is the one that the command itself has. */
    private static final List<Map.Entry<String, Function<Surroundings, Callable<Integer>>>> COMMANDS = List.of(
            Map.entry("demo", DemoCommand::new),
            Map.entry("run", RunCommand::new),
            Map.entry("new", NewCommand::new),
            Map.entry("check", CheckCommand::new),
            Map.entry("draw", DrawCommand::new),
            Map.entry("ports", PortsCommand::new),
            Map.entry("replay", ReplayCommand::new),
            Map.entry("diagnose", DiagnoseCommand::new),
            Map.entry("report", ReportCommand::new),
            Map.entry("compare", CompareCommand::new),
            Map.entry("history", HistoryCommand::new),
            Map.entry("simulate", SimulateCommand::new),
            Map.entry("faults", FaultsCommand::new),
            Map.entry("netlist", NetlistCommand::new),
            Map.entry("learn", LearnCommand::new),
            Map.entry("export", ExportCommand::new),
            Map.entry("format", FormatCommand::new));

    private static final String FIRST_STEPS = """
            Buzzout proves a hand-wired key matrix wire by wire and names the joint to repair.

              buzzout demo                   try it first: a simulated board, nothing plugged in
              buzzout new 4x12 > mine.toml   write a plan of your own board to start from
              buzzout run mine.toml          test the board that is plugged in
              buzzout --help                 all commands
            """;

    private final Surroundings surroundings;

    private BuzzoutCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /**
     * The command line that can take these arguments. Making a command reads its options by reflection, so where the first
     * argument names one, only that one is made.
     */
    static CommandLine commandLine(Surroundings surroundings, String... arguments) {
        CommandLine line = new CommandLine(new BuzzoutCommand(surroundings));
        String first = arguments.length == 0 ? "" : arguments[0];
        boolean named = COMMANDS.stream().anyMatch(command -> command.getKey().equals(first));
        for (Map.Entry<String, Function<Surroundings, Callable<Integer>>> command : COMMANDS) {
            if (!named || command.getKey().equals(first)) {
                line.addSubcommand(command.getValue().apply(surroundings));
            }
        }
        line.getCommandSpec().version("Buzzout " + Version.NUMBER);
        return line;
    }

    @Override
    public Integer call() {
        surroundings.console().say(FIRST_STEPS);
        return Status.FINE;
    }
}
