package buzzout.cli;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.report.BounceText;
import buzzout.screen.Ears;
import buzzout.screen.Leaving;
import buzzout.screen.Request;
import buzzout.screen.Signals;
import buzzout.screen.Snapshot;
import buzzout.session.Action;
import buzzout.session.Session;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** A session without a screen: what happens is printed line by line, and typed words are obeyed. */
final class PlainSitting {
    private static final int MILLIS_A_LOOK = 100;
    private static final int PATIENCE_MILLIS = 15_000;

    private static final int MOST_BOUNCES = 10;

    private static final String HELP =
            "Press keys. Type `nothing KEY` when nothing came, `all` when every key has been pressed, `back` to take the"
                    + " last back, `quit` to end. `call` calls one key after another until `leave`; `n` is enough"
                    + " there when nothing came. `touch` names the joint that it tells most to touch with the flying"
                    + " lead, `touch NET KEY` is one of your own; `n` when it meets nothing. `findings` numbers the"
                    + " findings, `repaired NUMBER` or `repaired CODE` retests after a repair. Or type `read`, press"
                    + " each key once in reading order, eyes on the board, then type `done`. `flex` begins or ends a"
                    + " flex check, `together` has you hold several keys at once, `bounce` shows how long contacts"
                    + " bounced, `mute` turns the tones off or on.";

    private final Surroundings surroundings;
    private final LiveBench bench;
    private final Ears ears;
    private final CountDownLatch end = new CountDownLatch(1);

    private PlainSitting(Surroundings surroundings, LiveBench bench, Ears ears) {
        this.surroundings = surroundings;
        this.bench = bench;
        this.ears = ears;
    }

    /** Returns when the person quits, when a signal comes, or when no probe has answered for a while. */
    static Leaving hold(Surroundings surroundings, LiveBench bench, Ears ears, Signals signals)
            throws InterruptedException {
        try {
            return new PlainSitting(surroundings, bench, ears).held(signals);
        } finally {
            ears.close();
        }
    }

    private Leaving held(Signals signals) throws InterruptedException {
        signals.then(end::countDown);
        surroundings.console().say(HELP);
        Thread reader = new Thread(bench.guarded(this::obeyTypedWords), "typed words");
        reader.setDaemon(true);
        reader.start();
        PlainLines lines = new PlainLines();
        Optional<String> told = Optional.empty();
        while (!end.await(MILLIS_A_LOOK, TimeUnit.MILLISECONDS)) {
            Snapshot now = bench.now();
            ears.hear();
            if (!ears.trouble().equals(told)) {
                told = ears.trouble();
                told.ifPresent(surroundings.console()::complain);
            }
            lines.settled(now, bench.millis()).forEach(surroundings.console()::say);
            if (now.session().probe().isEmpty() && bench.millis() > PATIENCE_MILLIS) {
                break;
            }
        }
        OptionalInt signal = signals.caught();
        return signal.isPresent() ? new Leaving.Signalled(signal.getAsInt()) : new Leaving.Quit();
    }

    private void obeyTypedWords() {
        try (BufferedReader typed =
                new BufferedReader(new InputStreamReader(surroundings.in(), StandardCharsets.UTF_8))) {
            for (String line = typed.readLine(); line != null; line = typed.readLine()) {
                obey(line.strip());
            }
        } catch (IOException e) {
            surroundings.console().complain("Cannot read what you type: " + e.getMessage());
        }
    }

    private void obey(String line) {
        if (line.equals("quit")) {
            end.countDown();
        } else if (line.equals("flex")) {
            bench.ask(new Request.FlexCheck());
        } else if (line.equals("together")) {
            bench.ask(new Request.AllAtOnce());
        } else if (line.equals("mute")) {
            ears.mute(!ears.isMuted());
            surroundings.console().say(ears.isMuted() ? "Muted." : "Tones are on.");
        } else if (line.equals("bounce")) {
            Session session = bench.now().session();
            surroundings.console().say(BounceText.of(session.plan(), session.bounces(), MOST_BOUNCES));
        } else if (line.equals("all")) {
            bench.tell(new Action.AllPressed());
        } else if (line.equals("read")) {
            bench.tell(new Action.ReadThroughBegun());
        } else if (line.equals("done")) {
            bench.tell(new Action.ReadThroughEnded());
        } else if (line.equals("back")) {
            bench.takeBack();
        } else if (line.equals("touch")) {
            if (!bench.nameTouch()) {
                surroundings.console().say("No touch would tell anything now.");
            }
        } else if (line.startsWith("touch ")) {
            touch(line.substring("touch ".length()).strip().split(" +", 2));
        } else if (line.equals("call")) {
            bench.ask(new Request.BeginRollCall());
        } else if (line.equals("leave")) {
            bench.ask(new Request.LeaveRollCall());
        } else if (line.equals("n") || line.equals("nothing")) {
            nothingCame();
        } else if (line.equals("findings")) {
            PlainFindings.list(bench.now()).forEach(surroundings.console()::say);
        } else if (line.startsWith("repaired ")) {
            repaired(line.substring("repaired ".length()).strip());
        } else if (line.startsWith("nothing ")) {
            nothingCame(line.substring("nothing ".length()).strip());
        } else if (!line.isEmpty()) {
            surroundings.console().say(HELP);
        }
    }

    private void touch(String[] netAndKey) {
        Plan plan = bench.now().session().plan();
        Optional<Joint> joint = plan.net(netAndKey[0])
                .flatMap(net -> plan.key(netAndKey.length > 1 ? netAndKey[1] : "")
                        .filter(key -> key.net(net.kind()) == plan.indexOf(net))
                        .map(key -> new Joint(key.index(), net.kind())));
        if (plan.sparePin().isEmpty()) {
            surroundings.console().complain("The plan has no spare pin for a flying lead; give it one: spare = \"…\".");
        } else if (joint.isPresent()) {
            bench.tell(new Action.TouchCalled(joint.get()));
        } else {
            surroundings.console().complain("The plan has no such joint; type a net and one of its keys: touch R2 E.");
        }
    }

    private void nothingCame() {
        Session session = bench.now().session();
        if (session.lead().called().isPresent()) {
            bench.tell(new Action.TouchedNothing(session.lead().called().get()));
            return;
        }
        session.called()
                .ifPresentOrElse(
                        key -> bench.tell(new Action.NothingCame(key)),
                        () -> surroundings.console().complain("No key is called; type `nothing KEY`."));
    }

    private void repaired(String which) {
        PlainFindings.repaired(bench.now(), which)
                .ifPresentOrElse(
                        bench::ask,
                        () -> surroundings
                                .console()
                                .complain("\"" + which + "\" is no finding's number, and no fault's code; type"
                                        + " `findings` for both."));
    }

    private void nothingCame(String name) {
        Optional<Key> key = bench.now().session().plan().key(name);
        if (key.isPresent()) {
            bench.tell(new Action.NothingCame(key.get().index()));
        } else {
            surroundings.console().complain("The plan has no key \"" + name + "\".");
        }
    }
}
