package buzzout.cli;

import buzzout.journal.Journal;
import buzzout.probe.LinkSource;
import buzzout.probe.LiveProbe;
import buzzout.probe.NothingAnswers;
import buzzout.probe.SerialPorts;
import buzzout.report.FindingsText;
import buzzout.report.Outcome;
import buzzout.screen.BoardScreen;
import buzzout.screen.Leaving;
import buzzout.screen.Setting;
import buzzout.session.Action;
import buzzout.session.Session;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Consumer;

/** A session in real time, on the screen or as plain text, from its first event to the findings. */
final class LiveSitting {
    private final Surroundings surroundings;
    private final Common common;
    private final LoadedPlan loaded;
    private final Optional<String> unit;
    private final Journal journal;

    LiveSitting(Surroundings surroundings, Common common, LoadedPlan loaded, Optional<String> unit, Journal journal) {
        this.surroundings = surroundings;
        this.common = common;
        this.loaded = loaded;
        this.unit = unit;
        this.journal = journal;
    }

    /** On a probe. */
    int onProbe(LinkSource source, boolean rollCall) throws IOException, InterruptedException {
        LiveBench bench = LiveBench.start(new Bench(loaded, journal), BoardHands.NONE);
        return hold(bench, source, false, live -> {
            if (rollCall) {
                live.tell(new Action.RollCallBegun());
            }
        });
    }

    /** On a simulated board, in hands that do what the person asks, and something of their own from the beginning. */
    int simulated(LinkSource board, BoardHands hands, Consumer<LiveBench> begun)
            throws IOException, InterruptedException {
        return hold(LiveBench.start(new Bench(loaded, journal), hands), board, true, begun);
    }

    private int hold(LiveBench bench, LinkSource source, boolean simulated, Consumer<LiveBench> begun)
            throws IOException, InterruptedException {
        LiveProbe probe = LiveProbe.start(loaded.plan(), source, bench::hear);
        Leaving leaving;
        try {
            begun.accept(bench);
            leaving = surroundings.obstacle().isEmpty()
                    ? BoardScreen.run(setting(simulated), bench)
                    : PlainSitting.hold(surroundings, bench);
        } finally {
            probe.close();
        }
        return over(bench.end().session(), leaving);
    }

    private Setting setting(boolean simulated) {
        return new Setting(
                unit, Optional.of(journal.path().toString()), common.look(surroundings.environment()), simulated);
    }

    /** Says what came of it. The evidence is weighed from scratch, exactly as a replay will. */
    private int over(Session session, Leaving leaving) {
        int status;
        if (session.probe().isEmpty()) {
            if (session.linkTrouble().isPresent()) {
                surroundings.console().complain(session.linkTrouble().get());
            } else {
                NothingAnswers.whatToTry(SerialPorts.list()).forEach(surroundings.console()::complain);
            }
            status = Status.NO_PROBE;
        } else {
            Outcome outcome = Outcome.of(unit, Optional.empty(), session);
            boolean ascii = common.look(surroundings.environment()).ascii();
            surroundings.console().say(FindingsText.of(outcome, ascii));
            status = DiagnoseCommand.status(outcome);
        }
        if (!common.quiet) {
            surroundings.console().say("\nLog: " + journal.path());
        }
        return leaving instanceof Leaving.Signalled by ? Status.SIGNAL + by.number() : status;
    }
}
