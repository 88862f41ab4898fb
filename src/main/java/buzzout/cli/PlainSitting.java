package buzzout.cli;

import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.screen.Leaving;
import buzzout.screen.Snapshot;
import buzzout.session.Action;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** A session without a screen: what happens is printed line by line, and typed words are obeyed. */
final class PlainSitting {
    private static final int MILLIS_A_LOOK = 100;
    private static final int PATIENCE_MILLIS = 15_000;

    private static final String HELP =
            "Press keys. Type `nothing KEY` when nothing came, `all` when every key has been pressed, `touch` to be named a"
                    + " joint for the flying lead, `touch NET KEY` to name one, `nothing` when it met nothing, `back` to"
                    + " take the last back, `quit` to end.";

    private final Surroundings surroundings;
    private final LiveBench bench;
    private final CountDownLatch end = new CountDownLatch(1);

    private PlainSitting(Surroundings surroundings, LiveBench bench) {
        this.surroundings = surroundings;
        this.bench = bench;
    }

    /** Returns when the person quits, or when no probe has answered for a while. */
    static Leaving hold(Surroundings surroundings, LiveBench bench) throws InterruptedException {
        return new PlainSitting(surroundings, bench).held();
    }

    private Leaving held() throws InterruptedException {
        surroundings.console().say(HELP);
        Thread reader = new Thread(this::obeyTypedWords, "typed words");
        reader.setDaemon(true);
        reader.start();
        PlainLines lines = new PlainLines();
        while (!end.await(MILLIS_A_LOOK, TimeUnit.MILLISECONDS)) {
            Snapshot now = bench.now();
            lines.settled(now, bench.millis()).forEach(surroundings.console()::say);
            if (now.session().probe().isEmpty() && bench.millis() > PATIENCE_MILLIS) {
                break;
            }
        }
        return new Leaving.Quit();
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
        } else if (line.equals("all")) {
            bench.tell(new Action.AllPressed());
        } else if (line.equals("back")) {
            bench.takeBack();
        } else if (line.equals("touch")) {
            if (!bench.nameTouch()) {
                surroundings.console().say("No touch would tell anything now.");
            }
        } else if (line.startsWith("touch ")) {
            touch(line.substring("touch ".length()).strip().split(" +", 2));
        } else if (line.equals("nothing")) {
            metNothing();
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

    private void metNothing() {
        Optional<Joint> called = bench.now().session().lead().called();
        if (called.isPresent()) {
            bench.tell(new Action.TouchedNothing(called.get()));
        } else {
            surroundings.console().complain("No joint was named; for a key, type `nothing KEY`.");
        }
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
