package buzzout.cli;

import java.util.concurrent.Callable;
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

    static CommandLine commandLine(Surroundings surroundings) {
        CommandLine line = new CommandLine(new BuzzoutCommand(surroundings))
                .addSubcommand(new DemoCommand(surroundings))
                .addSubcommand(new RunCommand(surroundings))
                .addSubcommand(new NewCommand(surroundings))
                .addSubcommand(new CheckCommand(surroundings))
                .addSubcommand(new DrawCommand(surroundings))
                .addSubcommand(new PortsCommand(surroundings))
                .addSubcommand(new ReplayCommand(surroundings))
                .addSubcommand(new DiagnoseCommand(surroundings))
                .addSubcommand(new ReportCommand(surroundings))
                .addSubcommand(new CompareCommand(surroundings))
                .addSubcommand(new HistoryCommand(surroundings))
                .addSubcommand(new SimulateCommand(surroundings))
                .addSubcommand(new FaultsCommand(surroundings))
                .addSubcommand(new NetlistCommand(surroundings))
                .addSubcommand(new LearnCommand(surroundings))
                .addSubcommand(new ExportCommand(surroundings))
                .addSubcommand(new FormatCommand(surroundings));
        line.getCommandSpec().version("Buzzout " + Version.NUMBER);
        return line;
    }

    @Override
    public Integer call() {
        surroundings.console().say(FIRST_STEPS);
        return Status.FINE;
    }
}
