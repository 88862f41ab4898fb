package buzzout.bench;

import buzzout.plan.ExamplePlan;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.plan.PlanText;
import buzzout.probe.PtyBoard;
import buzzout.probe.SimulatedBoard;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;

/**
 * From the byte of a press at the probe's pty to the frame that shows it at the terminal's, in the launched program, idle
 * and while another key chatters as fast as the probe can sweep; and idle to its tone, the terminal's bell as over ssh.
 * The two ways through Python are part of it.
 */
final class PressToScreen {
    private static final int CHATTERER = 0;
    private static final int CHATTER_SECONDS = 5;
    private static final int HELD_MILLIS = 30;
    /** What comes during a ring is told after it. */
    private static final int RINGING_MILLIS = 180;

    private static final int FIRST_TONE_MILLIS = 1000;

    private final Plan plan;
    private final SimulatedBoard board;
    private final Random random = new Random(46);
    private String tail = "";
    private String awaited = "";
    private long sentAtNanos;

    private PressToScreen(Plan plan) {
        this.plan = plan;
        board = SimulatedBoard.inRealTime(plan, List.of(), 46);
    }

    static void measure(int presses, List<Row> rows) throws IOException, InterruptedException {
        Plan quayside = ExamplePlan.quayside();
        for (boolean flood : new boolean[] {false, true}) {
            tell(
                    rows,
                    "press to screen, " + (flood ? "under flood" : "idle"),
                    new PressToScreen(quayside).press(presses, flood));
        }
        tell(rows, "press to tone, idle", new PressToScreen(quayside).tones(presses));
        double[] medians = new double[Sizes.BOARDS.size()];
        for (int size = 0; size < medians.length; size++) {
            medians[size] = Median.of(new PressToScreen(Sizes.BOARDS.get(size)).press(presses / 5, false));
        }
        Sizes.add(rows, "press to screen, idle, median", "ms", medians);
    }

    private static void tell(List<Row> rows, String what, double[] millis) {
        Arrays.sort(millis);
        rows.add(Row.of(what + ", median of " + millis.length, millis[millis.length / 2], "ms"));
        rows.add(Row.of(what + ", p99", millis[millis.length * 99 / 100], "ms", 20));
        rows.add(Row.of(what + ", most", millis[millis.length - 1], "ms"));
    }

    private double[] press(int presses, boolean flood) throws IOException, InterruptedException {
        double[] millis = new double[presses];
        try (Folder folder = Folder.make();
                PtyBoard pty = PtyBoard.of(board, this::sending);
                PtyTerminal terminal = PtyTerminal.running(
                        folder.path(),
                        Map.of(),
                        Launched.command("run", plan(folder), "--port", pty.path(), "--log", "log.jsonl", "--quiet"))) {
            terminal.await("Press every key");
            long chatterEnds = 0;
            for (int press = 0; press < presses; press++) {
                if (flood && System.nanoTime() > chatterEnds) {
                    board.bounce(key(CHATTERER), CHATTER_SECONDS * 1_000_000L);
                    board.press(key(CHATTERER));
                    chatterEnds = System.nanoTime() + (CHATTER_SECONDS - 1) * 1_000_000_000L;
                }
                Thread.sleep(20 + random.nextInt(60));
                millis[press] = seen(terminal, key(1 + press % (plan.keys().size() - 1)));
            }
        }
        return millis;
    }

    private double[] tones(int presses) throws IOException, InterruptedException {
        double[] millis = new double[presses];
        try (Folder folder = Folder.make();
                PtyBoard pty = PtyBoard.of(board, this::sending);
                PtyTerminal terminal = PtyTerminal.running(
                        folder.path(),
                        Map.of("SSH_CONNECTION", "192.0.2.1 1 192.0.2.2 22"),
                        Launched.command("run", plan(folder), "--port", pty.path(), "--log", "log.jsonl"))) {
            terminal.await("Press every key");
            // That the quiet check is done is told by a tone of its own.
            Thread.sleep(FIRST_TONE_MILLIS);
            for (int press = 0; press < presses; press++) {
                Thread.sleep(RINGING_MILLIS + random.nextInt(60));
                millis[press] = heard(terminal, key(1 + press % (plan.keys().size() - 1)));
            }
        }
        return millis;
    }

    private double heard(PtyTerminal terminal, Key key) throws InterruptedException {
        int before = terminal.rings();
        awaitSending(key);
        board.press(key);
        long rung = terminal.await("a ring", glass -> glass.rings() > before);
        long sent = sentAtNanos();
        Thread.sleep(HELD_MILLIS);
        board.release(key);
        return (rung - sent) / 1e6;
    }

    private String plan(Folder folder) throws IOException {
        return Files.writeString(folder.resolve("plan.toml"), PlanText.of(plan, List.of()))
                .toString();
    }

    private double seen(PtyTerminal terminal, Key key) throws InterruptedException {
        int low = key.net(plan.stripe());
        int reads = key.net(plan.stripe().other());
        awaitSending(key);
        board.press(key);
        String pair = plan.nets().get(low).name() + "→" + plan.nets().get(reads).name();
        Pattern told = Pattern.compile("pressed: (?:.*, )?" + pair + "\\b");
        long shown = terminal.await(pair, glass -> glass.shows(told));
        long sent = sentAtNanos();
        Thread.sleep(HELD_MILLIS);
        board.release(key);
        return (shown - sent) / 1e6;
    }

    private void awaitSending(Key key) {
        await(" " + key.net(plan.stripe()) + " " + key.net(plan.stripe().other()) + "*");
    }

    private Key key(int index) {
        return plan.keys().get(index);
    }

    private synchronized void await(String end) {
        awaited = end;
        sentAtNanos = 0;
    }

    private synchronized long sentAtNanos() {
        return sentAtNanos;
    }

    private synchronized void sending(String bytes) {
        long now = System.nanoTime();
        tail += bytes;
        if (sentAtNanos == 0 && tail.lines().anyMatch(line -> line.startsWith("+ ") && line.contains(awaited))) {
            sentAtNanos = now;
        }
        tail = tail.substring(tail.lastIndexOf('\n') + 1);
    }
}
