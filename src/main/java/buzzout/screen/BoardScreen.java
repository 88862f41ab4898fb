package buzzout.screen;

import buzzout.circuit.Pairs;
import buzzout.session.Press;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.terminal.Terminal;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** The screen of a session, from its opening to the person's leaving it. */
public final class BoardScreen {
    /** How long a keystroke may wait. What comes from the board wakes the screen at once. */
    private static final long MILLIS_A_LOOK = 10;

    /** So long a frame stands at least, unless a key is pressed: one that chatters leaves time for everything else. */
    private static final long MILLIS_A_FRAME = 8;

    private final Paper paper;
    private final Source source;
    private final Ears ears;
    private View view;
    private boolean stale = true;

    private BoardScreen(Paper paper, Source source, Ears ears, View view) {
        this.paper = paper;
        this.source = source;
        this.ears = ears;
        this.view = view;
    }

    /** Why no screen can be shown here, as a sentence; nothing when one can. */
    public static Optional<String> obstacle(Map<String, String> environment) {
        return Terminals.obstacle(environment);
    }

    /**
     * Shows a session until the person quits, a signal ends it or the terminal goes away. The terminal is left as it was,
     * whatever happens.
     *
     * @throws IOException if the terminal cannot be used
     */
    public static Leaving run(Opening opening, Setting setting, Source source, Signals signals) throws IOException {
        Terminal terminal = OwnTerminal.open(opening);
        try (terminal) {
            show(terminal, setting, source, ending(signals));
            return left(signals);
        } catch (IOException gone) {
            return signals.caught().isPresent() ? left(signals) : new Leaving.TerminalGone();
        }
    }

    private static CountDownLatch ending(Signals signals) {
        CountDownLatch end = new CountDownLatch(signals.count() > 0 ? 0 : 1);
        signals.then(end::countDown);
        return end;
    }

    private static Leaving left(Signals signals) {
        OptionalInt signal = signals.caught();
        return signal.isPresent() ? new Leaving.Signalled(signal.getAsInt()) : new Leaving.Quit();
    }

    /** Why no window can be opened here, as a sentence; nothing when one can. */
    public static Optional<String> windowObstacle() {
        return OwnWindow.obstacle();
    }

    /** Whether to open a window without being asked for one. */
    public static boolean prefersWindow() {
        return OwnWindow.isUsual();
    }

    /**
     * Shows a session in a window of its own until the person quits or closes it, or a signal comes.
     *
     * @throws IOException if the window does not open
     */
    public static Leaving runInWindow(Setting setting, Source source, Signals signals) throws IOException {
        String title = "Buzzout: " + source.now().plan().name()
                + setting.unit().map(unit -> ", unit " + unit).orElse("");
        try (Terminal window = OwnWindow.open(title)) {
            show(window, setting, source, ending(signals));
            return left(signals);
        }
    }

    /** The same on any terminal; returns when the person quits or {@code end} is counted down. */
    static void show(Terminal terminal, Setting setting, Source source, CountDownLatch end) throws IOException {
        try (Paper paper = Paper.on(terminal, setting.look().colour())) {
            View first = View.of(setting, source.now(), Focus.FIRST);
            Ears ears = Ears.open(() -> source.now().session(), setting.sound(), new Bell(terminal::bell));
            try {
                new BoardScreen(paper, source, ears, first).loop(end);
            } finally {
                ears.close();
            }
        }
    }

    private void loop(CountDownLatch end) throws IOException {
        while (true) {
            for (Optional<KeyStroke> stroke = paper.stroke(); stroke.isPresent(); stroke = paper.stroke()) {
                Optional<Command> command = Keys.command(stroke.get(), view);
                if (command.isPresent() && command.get() instanceof Command.Quit) {
                    return;
                }
                if (command.isPresent() && command.get() instanceof Command.Repaint) {
                    paper.clear();
                    stale = true;
                }
                command.ifPresent(this::obey);
            }
            Snapshot now = withTrouble(source.now());
            if (!now.equals(view.snapshot())) {
                view = view.with(view.focus().following(view.session(), now.session()))
                        .with(now);
                ears.hear();
                stale = true;
            }
            stale |= paper.isResized();
            boolean draws = stale;
            if (draws) {
                paper.show(Page.painted(view, paper.size()));
                stale = false;
            }
            if (waited(end, draws)) {
                return;
            }
        }
    }

    /** The sound system's trouble, where there is none that matters more. */
    private Snapshot withTrouble(Snapshot now) {
        return now.warning().isPresent()
                ? now
                : ears.trouble().map(now::withWarning).orElse(now);
    }

    private void obey(Command command) {
        if (!Page.fits(paper.size())) {
            return;
        }
        View before = view;
        view = command instanceof Command.Mute ? muted() : view.with(after(command));
        stale |= !view.equals(before);
    }

    private View muted() {
        Sound sound = view.setting().sound().turned();
        ears.mute(sound.muted());
        return view.with(view.setting().with(sound));
    }

    private Focus after(Command command) {
        Focus focus = view.focus();
        if (command instanceof Command.Ask ask) {
            source.ask(ask.request());
        } else if (command instanceof Command.ToggleHelp) {
            return focus.withHelp(!focus.help());
        } else if (command instanceof Command.CloseHelp) {
            return focus.withHelp(false).withBounce(false).closeUp(OptionalInt.empty());
        } else if (command instanceof Command.ToggleBounce) {
            return focus.withHelp(false).withBounce(!focus.bounce());
        } else if (command instanceof Command.LookClose) {
            return Page.lookingClose(view, paper.size());
        } else if (command instanceof Command.Flip) {
            return focus.flipped();
        } else if (command instanceof Command.Move move) {
            return focus.moved(view.plan(), move.right(), move.down());
        } else if (command instanceof Command.Choose choose) {
            return Page.choosing(view, paper.size(), choose.step());
        } else if (command instanceof Command.Scroll scroll) {
            return Page.scrolled(view, paper.size(), scroll.panes());
        }
        return focus;
    }

    /** Rests, or looks for something new; says whether it is over. */
    private boolean waited(CountDownLatch end, boolean hasDrawn) {
        try {
            if (hasDrawn) {
                rest();
            } else {
                source.awaitNews(MILLIS_A_LOOK);
            }
            return end.getCount() == 0;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    private void rest() throws InterruptedException {
        long drawn = System.nanoTime();
        long left = MILLIS_A_FRAME;
        while (left > 0 && !isPressedAnew()) {
            source.awaitNews(left);
            left = MILLIS_A_FRAME - TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - drawn);
        }
    }

    /** Whether a key was pressed since, or the last press closed more. */
    private boolean isPressedAnew() {
        List<Press> drawn = view.session().presses();
        List<Press> presses = source.now().session().presses();
        return presses.size() != drawn.size()
                || (!presses.isEmpty() && !closed(presses).equals(closed(drawn)));
    }

    private static Pairs closed(List<Press> presses) {
        return presses.get(presses.size() - 1).pairs();
    }
}
