package buzzout.cli;

import buzzout.journal.Journal;
import buzzout.plan.Joint;
import buzzout.probe.LinkSource;
import buzzout.probe.SimulatedBoard;
import buzzout.screen.Opening;
import buzzout.session.Action;
import buzzout.session.Event;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A session of which one thread fails: really, by an exception or an error that is thrown in it. */
final class FailingSession {
    static final String LOG = "failing.jsonl";

    /** Which thread, and what is thrown there. */
    enum Failing {
        /** Takes events into the session. */
        TAKING,
        /** Puts on the disk what was taken in. */
        SYNCING,
        /** Weighs the evidence. */
        WEIGHING,
        /** Talks to the probe. */
        TALKING,
        /** Draws, and passes on what was typed. */
        DRAWING,
        /** Reads typed words where there is no screen. */
        READING;

        void strike(Failing where) {
            if (this == where) {
                throw new StackOverflowError("thrown on purpose while " + this);
            }
        }
    }

    private FailingSession() {}

    /** On a screen in this terminal. Arguments: which thread fails. */
    public static void main(String[] arguments) throws Exception {
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        Surroundings surroundings = new Surroundings(
                new Console(out, err), System.in, Path.of(""), OffsetDateTime::now, System.getenv(), true);
        System.exit(hold(surroundings, new Canvas.OwnTerminal(Opening.begin(() -> {})), Failing.valueOf(arguments[0])));
    }

    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
    }

    /** Returns the exit status. */
    static int hold(Surroundings surroundings, Canvas canvas, Failing failing) throws Exception {
        LoadedPlan loaded = LoadedPlan.quayside();
        SimulatedBoard board = SimulatedBoard.inRealTime(loaded.plan(), List.of(), 1);
        try (Journal journal = SessionLogs.begin(surroundings, loaded, Optional.empty(), Optional.of(LOG))) {
            Surroundings around = new Surroundings(
                    surroundings.console(),
                    failing == Failing.READING ? new FailingInput() : surroundings.in(),
                    surroundings.folder(),
                    surroundings.clock(),
                    surroundings.environment(),
                    surroundings.mayDraw());
            return new LiveSitting(around, Common.USUAL, canvas, loaded, Optional.empty(), journal)
                    .simulated(
                            new FailingBench(loaded, journal, failing),
                            source(board, failing),
                            hands(failing),
                            live -> {
                                live.tell(new Action.Noted("first"));
                                live.tell(new Action.Noted("second"));
                                live.tell(new Action.Noted("third"));
                            });
        } catch (RuntimeException | Error e) {
            return Program.failed(surroundings, e);
        }
    }

    private static LinkSource source(SimulatedBoard board, Failing failing) {
        return () -> {
            failing.strike(Failing.TALKING);
            return board.open();
        };
    }

    private static BoardHands hands(Failing failing) {
        return new BoardHands() {
            @Override
            public void press(int key, LiveBench bench) {
                failing.strike(Failing.DRAWING);
            }

            @Override
            public void holdOrLetGo(int key) {}

            @Override
            public void holdTogether(Set<Integer> keys) {}

            @Override
            public void letGo() {}

            @Override
            public void touch(Joint joint) {}

            @Override
            public void repair(List<String> codes, LiveBench bench) {}
        };
    }

    private static final class FailingBench extends Bench {
        private final Failing failing;

        FailingBench(LoadedPlan loaded, Journal journal, Failing failing) {
            super(loaded, journal);
            this.failing = failing;
        }

        @Override
        void take(List<Event> events) {
            super.take(events);
            if (!events.isEmpty()) {
                failing.strike(Failing.TAKING);
            }
        }

        @Override
        void sync() {
            failing.strike(Failing.SYNCING);
            super.sync();
        }

        @Override
        void glance() {
            failing.strike(Failing.WEIGHING);
            super.glance();
        }
    }

    private static final class FailingInput extends InputStream {
        @Override
        public int read() throws IOException {
            return read(new byte[1], 0, 1);
        }

        @Override
        public int read(byte[] into, int from, int count) {
            Failing.READING.strike(Failing.READING);
            return -1;
        }
    }
}
