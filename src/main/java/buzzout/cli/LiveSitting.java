package buzzout.cli;

import buzzout.circuit.AsWired;
import buzzout.journal.Journal;
import buzzout.journal.LogNotWritten;
import buzzout.probe.LinkSource;
import buzzout.probe.LiveProbe;
import buzzout.probe.NothingAnswers;
import buzzout.probe.SerialPorts;
import buzzout.probe.SettleTime;
import buzzout.report.FindingsText;
import buzzout.report.Outcome;
import buzzout.screen.BoardScreen;
import buzzout.screen.Ears;
import buzzout.screen.Leaving;
import buzzout.screen.Look;
import buzzout.screen.Setting;
import buzzout.screen.Signals;
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

    /** What becomes of a session in the end; to work that out may take its time, to say it may not. */
    interface Ending {
        LastWord.Saying of(Session session);
    }

    /** On a probe; what the person said in advance is told once the quiet check is over. */
    int onProbe(LinkSource source, SettleTime settle, List<Action> afterQuietCheck, boolean rollCall)
            throws Failure, IOException, InterruptedException {
        return onProbe(source, settle, afterQuietCheck, rollCall, this::findings);
    }

    /** On a probe, to another end than findings. */
    int onProbe(LinkSource source, SettleTime settle, List<Action> afterQuietCheck, boolean rollCall, Ending ending)
            throws Failure, IOException, InterruptedException {
        LiveBench bench = LiveBench.start(new Bench(loaded, journal, past, afterQuietCheck), past, BoardHands.NONE);
        return hold(bench, source, settle, false, ending, live -> {
            if (rollCall) {
                live.tell(new Action.RollCallBegun());
            }
        });
    }

    /** On a simulated board, in hands that do what the person asks, and something of their own from the beginning. */
    int simulated(LinkSource board, BoardHands hands, Consumer<LiveBench> begun)
            throws Failure, IOException, InterruptedException {
        return simulated(new Bench(loaded, journal), board, hands, begun);
    }

    /** The same on a bench of one's own. */
    int simulated(Bench bench, LinkSource board, BoardHands hands, Consumer<LiveBench> begun)
            throws Failure, IOException, InterruptedException {
        return hold(LiveBench.start(bench, hands), board, SettleTime.USUAL, true, this::findings, begun);
    }

    private int hold(
            LiveBench bench,
            LinkSource source,
            SettleTime settle,
            boolean simulated,
            Ending ending,
            Consumer<LiveBench> begun)
            throws Failure, IOException, InterruptedException {
        try (Signals signals = Signals.on()) {
            Leaving leaving = held(bench, source, settle, simulated, begun, signals);
            Session session = bench.end().session();
            LastWord lastWord = new LastWord(signals, leaving);
            int status = lastWord.unlessSignalled(() -> over(session, ending));
            lastWord.explanation(worthALog(session) ? Optional.of(journal.path()) : Optional.empty(), simulated)
                    .ifPresent(surroundings.console()::complain);
            return status;
        } catch (RuntimeException | Error e) {
            throw broken(bench, e);
        }
    }

    private Leaving held(
            LiveBench bench,
            LinkSource source,
            SettleTime settle,
            boolean simulated,
            Consumer<LiveBench> begun,
            Signals signals)
            throws IOException, InterruptedException {
        LiveProbe probe = LiveProbe.start(loaded.plan(), source, settle, bench::hear, bench::fail);
        try (probe) {
            begun.accept(bench);
            if (canvas instanceof Canvas.OwnTerminal terminal) {
                return BoardScreen.run(terminal.opening(), setting(simulated), bench, signals);
            } else if (canvas instanceof Canvas.Window) {
                return BoardScreen.runInWindow(setting(simulated), bench, signals);
            }
            return PlainSitting.hold(
                    surroundings, bench, Ears.open(() -> bench.now().session(), sound()), signals);
        }
    }

    /** What came before it is in the log all the same. */
    private SessionBroken broken(LiveBench bench, Throwable cause) throws InterruptedException {
        SessionBroken broken = new SessionBroken(journal.path(), cause);
        try {
            bench.stop();
        } catch (LogNotWritten | RuntimeException e) {
            broken.addSuppressed(e);
        }
        return broken;
    }

    private Setting setting(boolean simulated) {
        Look look = common.lookOn(canvas, surroundings.environment());
        return new Setting(unit, Optional.of(journal.path().toString()), look, simulated, sound());
    }

    private Sound sound() {
        return Sound.from(surroundings.environment(), common.quiet());
    }

    private LastWord.Saying over(Session session, Ending ending) {
        LastWord.Saying saying = session.probe().isPresent() ? ending.of(session) : noProbe(session.linkTrouble());
        return () -> {
            try {
                return saying.say();
            } finally {
                if (worthALog(session)) {
                    sayLog();
                } else {
                    journal.discard();
                }
            }
        };
    }

    private LastWord.Saying noProbe(Optional<String> trouble) {
        List<String> why = trouble.map(List::of).orElseGet(() -> NothingAnswers.whatToTry(SerialPorts.list()));
        return () -> {
            why.forEach(surroundings.console()::complain);
            return Status.NO_PROBE;
        };
    }

    private boolean worthALog(Session session) {
        return session.probe().isPresent()
                || session.garbledLines() > 0
                || !past.events().isEmpty();
    }

    private void sayLog() {
        if (!common.quiet()) {
            surroundings.console().say("\nLog: " + journal.path());
        }
    }

    /** What is wrong. The evidence is weighed from scratch, exactly as a replay will. */
    private LastWord.Saying findings(Session session) {
        Outcome outcome = Outcome.of(unit, Optional.empty(), session);
        boolean ascii = common.look(surroundings.environment()).ascii();
        String findings = FindingsText.of(outcome, ascii);
        return () -> {
            surroundings.console().say(findings);
            sayAsWired(outcome);
            return DiagnoseCommand.status(outcome);
        };
    }

    private void sayAsWired(Outcome outcome) {
        if (outcome.diagnosis().findings().stream()
                .anyMatch(finding -> AsWired.canBe(finding.first().fault()))) {
            surroundings
                    .console()
                    .say("\nSolder it again, or keep it as wired: `buzzout learn " + journal.path()
                            + " --accept -o NEW.toml` writes the plan for that.");
        }
    }
}
