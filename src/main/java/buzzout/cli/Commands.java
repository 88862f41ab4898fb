package buzzout.cli;

import buzzout.line.Columns.Row;
import buzzout.line.Given;
import buzzout.line.Usage;
import java.util.List;
import java.util.Optional;

/** All commands. Nothing of one is loaded before it is named, for classes are most of a short start. */
final class Commands {
    /** What each does, in the order of the help. */
    static final List<Row> IN_SHORT = List.of(
            new Row("demo", DemoCommand.IN_SHORT),
            new Row("run", RunCommand.IN_SHORT),
            new Row("new", NewCommand.IN_SHORT),
            new Row("check", CheckCommand.IN_SHORT),
            new Row("draw", DrawCommand.IN_SHORT),
            new Row("ports", PortsCommand.IN_SHORT),
            new Row("rise", RiseCommand.IN_SHORT),
            new Row("replay", ReplayCommand.IN_SHORT),
            new Row("diagnose", DiagnoseCommand.IN_SHORT),
            new Row("report", ReportCommand.IN_SHORT),
            new Row("compare", CompareCommand.IN_SHORT),
            new Row("history", HistoryCommand.IN_SHORT),
            new Row("simulate", SimulateCommand.IN_SHORT),
            new Row("faults", FaultsCommand.IN_SHORT),
            new Row("netlist", NetlistCommand.IN_SHORT),
            new Row("learn", LearnCommand.IN_SHORT),
            new Row("export", ExportCommand.IN_SHORT),
            new Row("format", FormatCommand.IN_SHORT));

    private Commands() {}

    /** A command that could be given something. */
    record Known(Usage usage, Maker maker) {}

    /** Makes a command of what it is given. */
    interface Maker {
        Command made(Surroundings surroundings, Given given) throws Misuse;
    }

    static Optional<Known> named(String name) {
        return switch (name) {
            case "demo" -> known(DemoCommand.USAGE, DemoCommand::new);
            case "run" -> known(RunCommand.USAGE, RunCommand::new);
            case "new" -> known(NewCommand.USAGE, NewCommand::new);
            case "check" -> known(CheckCommand.USAGE, CheckCommand::new);
            case "draw" -> known(DrawCommand.USAGE, DrawCommand::new);
            case "ports" -> known(PortsCommand.USAGE, PortsCommand::new);
            case "rise" -> known(RiseCommand.USAGE, RiseCommand::new);
            case "replay" -> known(ReplayCommand.USAGE, ReplayCommand::new);
            case "diagnose" -> known(DiagnoseCommand.USAGE, DiagnoseCommand::new);
            case "report" -> known(ReportCommand.USAGE, ReportCommand::new);
            case "compare" -> known(CompareCommand.USAGE, CompareCommand::new);
            case "history" -> known(HistoryCommand.USAGE, HistoryCommand::new);
            case "simulate" -> known(SimulateCommand.USAGE, SimulateCommand::new);
            case "faults" -> known(FaultsCommand.USAGE, FaultsCommand::new);
            case "netlist" -> known(NetlistCommand.USAGE, NetlistCommand::new);
            case "learn" -> known(LearnCommand.USAGE, LearnCommand::new);
            case "export" -> known(ExportCommand.USAGE, ExportCommand::new);
            case "format" -> known(FormatCommand.USAGE, FormatCommand::new);
            default -> Optional.empty();
        };
    }

    private static Optional<Known> known(Usage usage, Maker maker) {
        return Optional.of(new Known(usage, maker));
    }
}
