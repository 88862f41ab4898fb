package buzzout.cli;

import buzzout.plan.Plan;
import buzzout.report.Paper;
import buzzout.report.WiringDrawing;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "draw",
        description = {DrawCommand.IN_SHORT, "For example: buzzout draw mine.toml -o mine.pdf"})
final class DrawCommand implements Callable<Integer> {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Draw a plan's wiring from both sides, with a soldering checklist and the wire it takes.";

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "PLAN", description = "The plan, a TOML file.")
    private String file = "";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            required = true,
            description = "Where to write; its name ends with .svg, .html or .pdf, which says the form.")
    private String output = "";

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "What a .pdf or .html is printed on: a4 unless you say letter.")
    private String paper = "";

    @Option(names = "--force", description = "Overwrite the file, if there is one.")
    private boolean force;

    DrawCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        WiringDrawing form = WiringDrawing.named(output)
                .orElseThrow(() -> new Failure(
                        Status.USAGE,
                        output + ": a drawing's name ends with .svg, .html or .pdf; choose one of these."));
        Paper sheet = switch (paper) {
            case "a4" -> Paper.A4;
            case "letter" -> Paper.LETTER;
            default ->
                throw new Failure(Status.USAGE, "There is no paper \"" + paper + "\"; there are `a4` and `letter`.");
        };
        NewFile.mustBeFree(surroundings, output, force);
        Plan plan = LoadedPlan.from(surroundings, file).plan();
        NewFile.write(surroundings, output, form.of(plan, sheet), force);
        if (!common.quiet) {
            surroundings.console().say("Wrote " + output + ": both sides of " + plan.name() + ", and the checklist.");
            changed(form.changedNames(plan));
        }
        return Status.FINE;
    }

    private void changed(List<String> names) {
        if (!names.isEmpty()) {
            surroundings
                    .console()
                    .say("A PDF's standard letters lack some of " + String.join(" ", names)
                            + "; these stand as code points such as U+2192. SVG and HTML show them.");
        }
    }
}
