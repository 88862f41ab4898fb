package buzzout.cli;

import buzzout.line.Given;
import buzzout.line.Option;
import buzzout.line.Usage;
import buzzout.plan.Plan;
import buzzout.report.Paper;
import buzzout.report.WiringDrawing;
import java.util.List;

final class DrawCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Draw a plan's wiring from both sides, with a soldering checklist and the wire it takes.";

    private static final Option OUTPUT = Option.needed(
                    "--output", "FILE", "Where to write; its name ends with .svg, .html or .pdf, which says the form.")
            .or("-o");
    private static final Option PAPER =
            Option.of("--paper", "a4|letter", "What a .pdf or .html is printed on: a4 unless you say letter.");

    static final Usage USAGE = Usage.of("buzzout draw", IN_SHORT, "For example: buzzout draw mine.toml -o mine.pdf")
            .taking(LoadedPlan.PLAN)
            .with(Common.OPTIONS)
            .with(OUTPUT, PAPER, NewFile.FORCE);

    private final Surroundings surroundings;
    private final Common common;
    private final String file;
    private final String output;
    private final String paper;
    private final boolean force;

    DrawCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        file = given.word(LoadedPlan.PLAN);
        output = given.value(OUTPUT).orElseThrow();
        paper = given.value(PAPER).orElse("a4");
        force = given.has(NewFile.FORCE);
    }

    @Override
    public int run() throws Failure {
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
        if (!common.quiet()) {
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
