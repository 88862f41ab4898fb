package buzzout.cli;

import buzzout.circuit.AsWired;
import buzzout.journal.Journal;
import buzzout.probe.LinkSource;
import buzzout.probe.LiveProbe;
import buzzout.probe.NothingAnswers;
import buzzout.probe.SerialPorts;
import buzzout.report.FindingsText;
import buzzout.report.Outcome;
import buzzout.screen.BoardScreen;
import buzzout.screen.Ears;
import buzzout.screen.Leaving;
import buzzout.screen.Look;
import buzzout.screen.Setting;
import buzzout.screen.Sound;
import buzzout.session.Action;
import buzzout.session.Session;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A session in real time, on the screen or as plain text, from its first event to the findings. */
final class LiveSitting {
    private final Surroundings surroundings;
    private final Common common;
    private final Canvas canvas;
    private final LoadedPlan loaded;
    private final Optional<String> unit;
    private final Journal journal;
    private final Past past;

    /** To take up a session again. */
    LiveSitting(Surroundings surroundings, Common common, Canvas canvas, Resumption from) {
        this(surroundings, common, canvas, from.loaded(), from.unit(), from.journal(), from.past());
    }

    LiveSitting(
            Surroundings surroundings,
            Common common,
            Canvas canvas,
            LoadedPlan loaded,
            Optional<String> unit,
            Journal journal) {
        this(surroundings, common, canvas, loaded, unit, journal, Past.NONE);
    }

    private LiveSitting(
            Surroundings surroundings,
            Common common,
            Canvas canvas,
            LoadedPlan loaded,
            Optional<String> unit,
            Journal journal,
            Past past) {
        this.surroundings = surroundings;
        this.common = common;
        this.canvas = canvas;
        this.loaded = loaded;
        this.unit = unit;
        this.journal = journal;
        this.past = past;
    }

    /** What becomes of a session in the end: says it, and gives the exit status. */
    interface Ending {
        int over(Session session) throws Failure, IOException;
    }

    /** On a probe; what the person said in advance is told once the quiet check is over. */
    int onProbe(LinkSource source, List<Action> afterQuietCheck, boolean rollCall)
            throws Failure, IOException, InterruptedException {
        return onProbe(source, afterQuietCheck, rollCall, this::findings);
    }

    /** On a probe, to another end than findings. */
    int onProbe(LinkSource source, List<Action> afterQuietCheck, boolean rollCall, Ending ending)
            throws Failure, IOException, InterruptedException {
        LiveBench bench = LiveBench.start(new Bench(loaded, journal, past, afterQuietCheck), past, BoardHands.NONE);
        return hold(bench, source, false, ending, live -> {
            if (rollCall) {
                live.tell(new Action.RollCallBegun());
            }
        });
    }

    /** On a simulated board, in hands that do what the person asks, and something of their own from the beginning. */
    int simulated(LinkSource board, BoardHands hands, Consumer<LiveBench> begun)
            throws Failure, IOException, InterruptedException {
        return hold(LiveBench.start(new Bench(loaded, journal), hands), board, true, this::findings, begun);
    }

    private int hold(LiveBench bench, LinkSource source, boolean simulated, Ending ending, Consumer<LiveBench> begun)
            throws Failure, IOException, InterruptedException {
        LiveProbe probe = LiveProbe.start(loaded.plan(), source, bench::hear);
        Leaving leaving;
        try {
            begun.accept(bench);
            leaving = switch (canvas) {
                case TERMINAL -> BoardScreen.run(setting(simulated), bench);
                case WINDOW -> BoardScreen.runInWindow(setting(simulated), bench);
                case NONE -> PlainSitting.hold(surroundings, bench, Ears.open(sound()));
            };
        } finally {
            probe.close();
        }
        return over(bench.end().session(), leaving, ending);
    }

    private Setting setting(boolean simulated) {
        Look look = canvas == Canvas.WINDOW
                ? common.lookInWindow(surroundings.environment())
                : common.look(surroundings.environment());
        return new Setting(unit, Optional.of(journal.path().toString()), look, simulated, sound());
    }

    private Sound sound() {
        return Sound.from(surroundings.environment(), common.quiet);
    }

    private int over(Session session, Leaving leaving, Ending ending) throws Failure, IOException {
        int status = Status.NO_PROBE;
        boolean worthALog = session.probe().isPresent()
                || session.garbledLines() > 0
                || !past.events().isEmpty();
        try {
            if (session.probe().isPresent()) {
                status = ending.over(session);
            } else if (session.linkTrouble().isPresent()) {
                surroundings.console().complain(session.linkTrouble().get());
            } else {
                NothingAnswers.whatToTry(SerialPorts.list()).forEach(surroundings.console()::complain);
            }
        } finally {
            if (worthALog) {
                sayLog();
            } else {
                journal.discard();
            }
        }
        return leaving instanceof Leaving.Signalled by ? Status.SIGNAL + by.number() : status;
    }

    private void sayLog() {
        if (!common.quiet) {
            surroundings.console().say("\nLog: " + journal.path());
        }
    }

    /** Says what is wrong. The evidence is weighed from scratch, exactly as a replay will. */
    private int findings(Session session) {
        Outcome outcome = Outcome.of(unit, Optional.empty(), session);
        boolean ascii = common.look(surroundings.environment()).ascii();
        surroundings.console().say(FindingsText.of(outcome, ascii));
        if (outcome.diagnosis().findings().stream()
                .anyMatch(finding -> AsWired.canBe(finding.first().fault()))) {
            surroundings
                    .console()
                    .say("\nSolder it again, or keep it as wired: `buzzout learn " + journal.path()
                            + " --accept -o NEW.toml` writes the plan for that.");
        }
        return DiagnoseCommand.status(outcome);
    }
}
