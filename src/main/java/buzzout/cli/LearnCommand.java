package buzzout.cli;

import buzzout.circuit.AsWired;
import buzzout.circuit.Fault;
import buzzout.diagnosis.Finding;
import buzzout.journal.LogFile;
import buzzout.journal.SessionLog;
import buzzout.plan.CorrectedText;
import buzzout.plan.Plan;
import buzzout.plan.PlanFile;
import buzzout.plan.PlanReader;
import buzzout.plan.PlanText;
import buzzout.report.Outcome;
import buzzout.session.Learnt;
import buzzout.session.OtherPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(
        name = "learn",
        description = {
            "Write the plan that a board turns out to have, from the log of a session in which its keys were called and"
                    + " pressed. What contradicts itself or is missing is told.",
            "With --accept: keep the plan, but take swapped leads, a mirrored board or turned stripes for right."
        })
final class LearnCommand implements Callable<Integer> {
    /** A finding less probable than this must first be settled. */
    private static final double SURE = 0.5;

    private final Surroundings surroundings;

    @Mixin
    Common common = new Common();

    @Parameters(paramLabel = "LOG", description = "A session log.")
    private String file = "";

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Where to write the plan; standard output unless given.")
    private Optional<String> output = Optional.empty();

    @Option(names = "--force", description = "Overwrite the file, if there is one.")
    private boolean force;

    @Option(
            names = "--accept",
            description =
                    "Change nothing in the log's plan but the pins of swapped leads and the side of the stripes, as"
                            + " the findings have them.")
    private boolean accept;

    LearnCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws Failure {
        LogFile read = LogReading.read(surroundings, file);
        if (read.log().isEmpty()) {
            return Status.USAGE;
        }
        SessionLog log = read.log().get();
        if (output.isPresent()) {
            NewFile.mustBeFree(surroundings, output.get(), force);
        }
        return accept ? accepted(log) : learnt(log);
    }

    private int learnt(SessionLog log) throws Failure {
        Learnt learnt = Learnt.from(log.replayed())
                .orElseThrow(() -> new Failure(
                        Status.USAGE,
                        file + ": no key that was called joined two pins, so nothing can be learnt.",
                        "A log tells which key a press was meant to be when the program called it: see `buzzout run"
                                + " --help`."));
        List<String> remarks = new ArrayList<>(List.of(
                "As wired, learnt from presses by Buzzout " + Version.NUMBER + ".",
                "The order of joints cannot be learnt from presses: where the earlier plan did not have the same net, it"
                        + " is reading order."));
        remarks.addAll(learnt.notes());
        write(log, PlanText.of(learnt.plan(), remarks));
        if (!common.quiet && output.isPresent()) {
            learnt.notes().forEach(surroundings.console()::say);
        }
        return learnt.notes().isEmpty() ? Status.FINE : Status.FINDINGS;
    }

    private int accepted(SessionLog log) throws Failure {
        Outcome outcome = Outcome.of(log);
        List<Fault> faults = new ArrayList<>();
        for (Finding finding : outcome.diagnosis().findings()) {
            Fault first = finding.first().fault();
            if (AsWired.canBe(first)) {
                if (finding.suspects().size() > 1 || finding.probability() < SURE) {
                    throw new Failure(
                            Status.USAGE,
                            file + ": it is not sure enough that " + first.says(log.plan()) + "; settle it first, as"
                                    + " `buzzout diagnose " + file + "` says.");
                }
                faults.add(first);
            }
        }
        if (faults.isEmpty()) {
            throw new Failure(
                    Status.USAGE,
                    file + ": the session has no finding that could be accepted as wired: no swapped leads, no mirrored"
                            + " board, no turned stripes.");
        }
        AsWired wired = AsWired.of(log.plan(), faults);
        String text = CorrectedText.of(log.header().planText(), wired.pins(), wired.stripe())
                .orElseThrow(() -> new Failure(
                        Status.USAGE,
                        file + ": its plan writes a pin in a way that cannot be changed here; use `buzzout learn "
                                + file + "` without --accept."));
        write(log, text);
        if (!common.quiet && output.isPresent()) {
            faults.forEach(fault -> surroundings.console().say("Taken for right: " + fault.says(log.plan()) + "."));
        }
        return Status.FINE;
    }

    /** Writes a plan that passes its check, and says what the session finds with it. */
    private void write(SessionLog log, String text) throws Failure {
        PlanFile checked = PlanReader.read(text, output.orElse("plan"));
        Plan plan = checked.plan()
                .orElseThrow(() -> new IllegalStateException("the plan as wired has problems: " + checked.problems()));
        if (output.isEmpty()) {
            surroundings.console().say(text);
            return;
        }
        NewFile.write(surroundings, output.get(), text, force);
        if (!common.quiet && OtherPlan.obstacle(log.plan(), plan).isEmpty()) {
            int findings = Outcome.of(log, plan).diagnosis().findings().size();
            surroundings
                    .console()
                    .say("Wrote " + output.get() + ". With it the session has "
                            + (findings == 0
                                    ? "no finding."
                                    : findings == 1 ? "one finding." : findings + " findings."));
        } else if (!common.quiet) {
            surroundings.console().say("Wrote " + output.get() + ".");
        }
    }
}
