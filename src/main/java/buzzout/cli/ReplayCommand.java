package buzzout.cli;

import buzzout.journal.LogFile;
import buzzout.journal.SessionLog;
import buzzout.line.Flag;
import buzzout.line.Given;
import buzzout.line.Operand;
import buzzout.line.Usage;
import buzzout.report.BounceText;
import buzzout.report.FindingsText;
import buzzout.report.Outcome;
import buzzout.report.SessionText;
import buzzout.screen.BoardScreen;
import buzzout.screen.EventLines;
import buzzout.screen.Leaving;
import buzzout.screen.Look;
import buzzout.screen.Request;
import buzzout.screen.Setting;
import buzzout.screen.Signals;
import buzzout.screen.Snapshot;
import buzzout.screen.Source;
import buzzout.session.Event;
import buzzout.session.Session;
import java.io.IOException;
import java.util.Optional;

final class ReplayCommand implements Command {
    /** What it does, as the list of all commands says it. */
    static final String IN_SHORT =
            "Rebuild a session from its log: how it went, the state of every key, the findings, and how long contacts"
                    + " bounced.";

    private static final int MOST_BOUNCES = 10;

    private static final Operand LOG = Operand.of("LOG", "A session log.");
    private static final Flag SCREEN = Flag.of("--screen", "Show it on the board screen, as it stood at the end.");

    static final Usage USAGE = Usage.of("buzzout replay", IN_SHORT)
            .taking(LOG)
            .with(Common.OPTIONS)
            .with(ScreenOption.WINDOW, SCREEN);

    private final Surroundings surroundings;
    private final Common common;
    private final String log;
    private final ScreenOption where;
    private final boolean screen;

    ReplayCommand(Surroundings surroundings, Given given) {
        this.surroundings = surroundings;
        common = Common.of(given);
        log = given.word(LOG);
        where = ScreenOption.of(given);
        screen = given.has(SCREEN);
    }

    @Override
    public int run() throws Failure, IOException, InterruptedException {
        LogFile file = LogReading.read(surroundings, log);
        if (file.log().isEmpty()) {
            return Status.USAGE;
        }
        SessionLog session = file.log().get();
        Outcome outcome = Outcome.of(session);
        if (screen || where.window()) {
            return shown(session, outcome);
        }
        boolean ascii = common.look(surroundings.environment()).ascii();
        if (!common.quiet()) {
            surroundings.console().say(SessionText.of(session, outcome.session(), ascii));
        }
        surroundings.console().say(FindingsText.of(outcome, ascii));
        if (!common.quiet() && outcome.session().bounces().presses() > 0) {
            surroundings
                    .console()
                    .say("\n" + BounceText.of(outcome.plan(), outcome.session().bounces(), MOST_BOUNCES));
        }
        return DiagnoseCommand.status(outcome);
    }

    private int shown(SessionLog session, Outcome outcome) throws Failure, IOException, InterruptedException {
        Canvas canvas = where.canvas(surroundings);
        if (canvas instanceof Canvas.None) {
            throw new Failure(
                    Status.USAGE,
                    surroundings.obstacle().orElse(""),
                    "Leave --screen out to read it as plain text, or add --window.");
        }
        Look look = common.lookOn(canvas, surroundings.environment());
        Snapshot last = new Snapshot(outcome.session(), outcome.diagnosis(), lines(session), Optional.empty());
        Setting setting = new Setting(session.header().unit(), Optional.of(log), look, false);
        Source still = new Source() {
            @Override
            public Snapshot now() {
                return last;
            }

            @Override
            public void ask(Request request) {
                // What is over cannot be changed.
            }
        };
        try (Signals signals = Signals.on()) {
            Leaving leaving = canvas instanceof Canvas.OwnTerminal terminal
                    ? BoardScreen.run(terminal.opening(), setting, still, signals)
                    : BoardScreen.runInWindow(setting, still, signals);
            return new LastWord(signals, leaving).unlessSignalled(() -> () -> DiagnoseCommand.status(outcome));
        }
    }

    private static EventLines lines(SessionLog log) {
        EventLines lines = EventLines.NONE;
        Session session = Session.of(log.plan());
        for (Event event : log.events()) {
            Session after = session.after(event);
            lines = lines.after(session, event, after);
            session = after;
        }
        return lines;
    }
}
