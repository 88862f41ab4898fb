package buzzout.cli;

import buzzout.circuit.AsWired;
import buzzout.circuit.Fault;
import buzzout.diagnosis.Finding;
import buzzout.journal.Journal;
import buzzout.journal.LogFile;
import buzzout.journal.SessionLog;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Option;
import buzzout.line.Usage;
import buzzout.plan.CorrectedText;
import buzzout.plan.PlanText;
import buzzout.probe.SettleTime;
import buzzout.report.Outcome;
import buzzout.session.Learnt;
import buzzout.session.Session;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

final class LearnCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Write the plan that a board turns out to have. From a log: of a session in which its keys were called. Else"
                    + " the program calls the keys now, on the board that is plugged in; FILE is a plan that may be wrong,"
                    + " or only a layout: name, controller, [layout] with lines = [\"Q W E\"], and pins = \"D0 D1\" where"
                    + " you know them.";

    /** A finding less probable than this must first be settled. */
    private static final double SURE = 0.5;

    private static final Operand FILE = Operand.of("FILE", "A session log, a plan, or a layout.");
    private static final Option OUTPUT = Option.of(
                    "--output", "FILE", "Where to write the plan; standard output unless given.")
            .or("-o");
    private static final Flag ACCEPT = Flag.of(
            "--accept",
            "Change nothing in the log's plan but the pins of swapped leads and the side of the stripes, as the findings"
                    + " have them.");
    private static final Option LOG = Option.of("--log", "FILE", "Where to write the log of a session held now.");

    static final Usage USAGE = Usage.of(
                    "buzzout learn",
                    IN_SHORT,
                    "With --accept: keep a log's plan, but take swapped leads, a mirrored board or turned stripes for right.")
            .taking(FILE)
            .with(Common.OPTIONS)
            .with(ProbeOptions.OPTIONS)
            .with(ScreenOption.WINDOW, SettleOption.SETTLE, OUTPUT, NewFile.FORCE, ACCEPT, LOG);

    private final Surroundings surroundings;
    private final Common common;
    private final ScreenOption screen;
    private final ProbeOptions probe;
    private final SettleTime settle;
    private final String file;
    private final Optional<String> output;
    private final boolean force;
    private final boolean accept;
    private final Optional<String> log;

    LearnCommand(Surroundings surroundings, Given given) throws Misuse {
        this.surroundings = surroundings;
        common = Common.of(given);
        screen = ScreenOption.of(given);
        probe = ProbeOptions.of(given);
        settle = SettleOption.time(given);
        file = given.word(FILE);
        output = given.value(OUTPUT);
        force = given.has(NewFile.FORCE);
        accept = given.has(ACCEPT);
        log = given.value(LOG);
    }

    @Override
    public int run() throws Failure, IOException, InterruptedException {
        if (output.isPresent()) {
            NewFile.mustBeFree(surroundings, output.get(), force);
        }
        if (isPlan()) {
            return live();
        }
        LogFile read = LogReading.read(surroundings, file);
        if (read.log().isEmpty()) {
            return Status.USAGE;
        }
        return accept ? accepted(read.log().get()) : learnt(read.log().get().replayed());
    }

    private boolean isPlan() {
        return file.endsWith(".toml");
    }

    private int live() throws Failure, IOException, InterruptedException {
        if (accept) {
            throw new Failure(Status.USAGE, "--accept needs a session log; " + file + " is a plan.");
        }
        Canvas canvas = screen.canvas(surroundings);
        LoadedPlan loaded = LoadedPlan.toLearnFrom(surroundings, file);
        try (Journal journal = SessionLogs.begin(surroundings, loaded, Optional.empty(), log)) {
            return new LiveSitting(surroundings, common, canvas, loaded, Optional.empty(), journal)
                    .onProbe(probe.source(), settle, List.of(), true, session -> () -> learnt(session));
        }
    }

    private int learnt(Session session) throws Failure {
        Learnt learnt = Learnt.from(session)
                .orElseThrow(() -> new Failure(
                        Status.USAGE,
                        file + ": no key that was called joined two pins, so nothing can be learnt.",
                        "Which key a press was meant to be is known only in a roll call: `buzzout learn PLAN`, or"
                                + " `buzzout run PLAN --roll-call`."));
        List<String> remarks = new ArrayList<>(List.of(
                "As wired, learnt from presses by Buzzout " + Version.NUMBER + ".",
                "The order of joints cannot be learnt from presses: where the earlier plan did not have the same net, it"
                        + " is reading order."));
        remarks.addAll(learnt.notes());
        WrittenPlan.write(surroundings, output, force, PlanText.of(learnt.plan(), remarks));
        if (output.isPresent() && !common.quiet()) {
            surroundings.console().say(WrittenPlan.remark(output.get(), session, learnt.plan()));
            learnt.notes().forEach(surroundings.console()::say);
        }
        return learnt.notes().isEmpty() ? Status.FINE : Status.FINDINGS;
    }

    private int accepted(SessionLog session) throws Failure {
        List<Fault> faults = acceptable(session);
        AsWired wired = AsWired.of(session.plan(), faults);
        String text = CorrectedText.of(session.header().planText(), wired.pins(), wired.stripe())
                .orElseThrow(() -> new Failure(
                        Status.USAGE,
                        file + ": its plan writes a pin in a way that cannot be changed here; use `buzzout learn "
                                + file + "` without --accept."));
        WrittenPlan written = WrittenPlan.write(surroundings, output, force, text);
        if (output.isPresent() && !common.quiet()) {
            surroundings.console().say(WrittenPlan.remark(output.get(), session.replayed(), written.plan()));
            faults.forEach(fault -> surroundings.console().say("Taken for right: " + fault.says(session.plan()) + "."));
        }
        return Status.FINE;
    }

    /** The findings that a plan can take for right; a failure where there is none, or one that is not sure. */
    private List<Fault> acceptable(SessionLog session) throws Failure {
        List<Fault> faults = new ArrayList<>();
        for (Finding finding : Outcome.of(session).diagnosis().findings()) {
            Fault first = finding.first().fault();
            if (AsWired.canBe(first)) {
                if (finding.suspects().size() > 1 || finding.probability() < SURE) {
                    throw new Failure(
                            Status.USAGE,
                            file + ": it is not sure enough that " + first.says(session.plan())
                                    + "; settle it first, as" + " `buzzout diagnose " + file + "` says.");
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
        return faults;
    }
}
