package buzzout.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The program's own command: the list of all others, and what to try first. */
final class BuzzoutCommand implements Callable<Integer> {
    /** In the order of the help. */
    private static final List<Entry> COMMANDS = List.of(
            new Entry("demo", DemoCommand.IN_SHORT, DemoCommand::new),
            new Entry("run", RunCommand.IN_SHORT, RunCommand::new),
            new Entry("new", NewCommand.IN_SHORT, NewCommand::new),
            new Entry("check", CheckCommand.IN_SHORT, CheckCommand::new),
            new Entry("draw", DrawCommand.IN_SHORT, DrawCommand::new),
            new Entry("ports", PortsCommand.IN_SHORT, PortsCommand::new),
            new Entry("rise", RiseCommand.IN_SHORT, RiseCommand::new),
            new Entry("replay", ReplayCommand.IN_SHORT, ReplayCommand::new),
            new Entry("diagnose", DiagnoseCommand.IN_SHORT, DiagnoseCommand::new),
            new Entry("report", ReportCommand.IN_SHORT, ReportCommand::new),
            new Entry("compare", CompareCommand.IN_SHORT, CompareCommand::new),
            new Entry("history", HistoryCommand.IN_SHORT, HistoryCommand::new),
            new Entry("simulate", SimulateCommand.IN_SHORT, SimulateCommand::new),
            new Entry("faults", FaultsCommand.IN_SHORT, FaultsCommand::new),
            new Entry("netlist", NetlistCommand.IN_SHORT, NetlistCommand::new),
            new Entry("learn", LearnCommand.IN_SHORT, LearnCommand::new),
            new Entry("export", ExportCommand.IN_SHORT, ExportCommand::new),
            new Entry("format", FormatCommand.IN_SHORT, FormatCommand::new));

    private static final Map<String, String> STATUSES = statuses();

    /**
     * A command.
     *
     * @param name the one that it has itself
     */
    private record Entry(String name, String inShort, Function<Surroundings, Callable<Integer>> maker) {
        CommandLine made(Surroundings surroundings) {
            return new CommandLine(maker.apply(surroundings));
        }

        /** Enough for the list of all commands. */
        CommandLine listed() {
            CommandSpec spec = CommandSpec.create().name(name);
            spec.usageMessage().description(inShort);
            return new CommandLine(spec);
        }
    }

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
     * The command line that can take these arguments. Making a command reads its options by reflection, which is most of
     * a short start: so none is made that the arguments do not name, and this one is put together by hand.
     */
    static CommandLine commandLine(Surroundings surroundings, String... arguments) {
        CommandLine line = new CommandLine(spec(new BuzzoutCommand(surroundings)));
        List<String> words = List.of(arguments);
        boolean named = COMMANDS.stream().anyMatch(command -> words.indexOf(command.name()) == 0);
        for (Entry command : COMMANDS) {
            if (words.contains(command.name())) {
                line.addSubcommand(command.made(surroundings));
            } else if (!named) {
                line.addSubcommand(command.listed());
            }
        }
        return line;
    }

    private static CommandSpec spec(BuzzoutCommand command) {
        CommandSpec spec = CommandSpec.wrapWithoutInspection(command)
                .name("buzzout")
                .version("Buzzout " + Version.NUMBER)
                .addOption(OptionSpec.builder("-h", "--help")
                        .usageHelp(true)
                        .description("Show this help message and exit.")
                        .build())
                .addOption(OptionSpec.builder("-V", "--version")
                        .versionHelp(true)
                        .description("Print version information and exit.")
                        .build());
        spec.usageMessage()
                .description("Proves a hand-wired key matrix wire by wire and names the joint to repair.")
                .synopsisSubcommandLabel("COMMAND")
                .sortOptions(false)
                .exitCodeListHeading("%nExit status:%n")
                .exitCodeList(STATUSES)
                .commandListHeading("%nCommands:%n")
                .footerHeading("%n")
                .footer("`buzzout COMMAND --help` tells more about each.");
        return spec;
    }

    private static Map<String, String> statuses() {
        Map<String, String> statuses = new LinkedHashMap<>();
        statuses.put("0", "did its work and found nothing wrong");
        statuses.put("1", "the board has findings");
        statuses.put("2", "the command line or a file is not as it should be");
        statuses.put("3", "no probe answered");
        statuses.put("4", "the session log could not be written");
        statuses.put("70", "the program itself failed; it names a file with the details");
        statuses.put("128+N", "ended by signal N");
        return statuses;
    }

    @Override
    public Integer call() {
        surroundings.console().say(FIRST_STEPS);
        return Status.FINE;
    }
}
