package buzzout.cli;

import buzzout.line.Columns;
import buzzout.line.Columns.Row;
import buzzout.line.Flag;
import buzzout.line.Help;
import buzzout.line.Operand;
import buzzout.line.Usage;
import java.util.List;

/** The program as a whole: what stands before any command, and what is told of all of them. */
final class Overview {
    static final Flag VERSION = Flag.of("-V", "--version", "Show the version.");

    static final Usage USAGE = Usage.of(
                    "buzzout", "Proves a hand-wired key matrix wire by wire and names the joint to repair.")
            .taking(Operand.handedOn("COMMAND"))
            .with(VERSION);

    static final String FIRST_STEPS = """
            Buzzout proves a hand-wired key matrix wire by wire and names the joint to repair.

              buzzout demo                   try it first: a simulated board, nothing plugged in
              buzzout new 4x12 > mine.toml   write a plan of your own board to start from
              buzzout run mine.toml          test the board that is plugged in
              buzzout --help                 all commands
            """;

    private Overview() {}

    static String help() {
        List<Row> statuses = List.of(
                new Row("0", "did its work and found nothing wrong"),
                new Row("1", "the board has findings"),
                new Row("2", "the command line or a file is not as it should be"),
                new Row("3", "no probe answered"),
                new Row("4", "the session log could not be written"),
                new Row("70", "the program itself failed; it names a file with the details"),
                new Row("128+N", "ended by signal N"));
        return Help.of(USAGE)
                + "\nCommands:\n" + Columns.of(Commands.IN_SHORT, 2)
                + "\nExit status:\n" + Columns.of(statuses, 3)
                + "\n`buzzout COMMAND --help` tells more about each.\n";
    }
}
