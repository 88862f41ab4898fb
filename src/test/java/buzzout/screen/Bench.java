package buzzout.screen;

import buzzout.diagnosis.Diagnosis;
import buzzout.plan.Plan;
import buzzout.session.KeyState;
import buzzout.session.Press;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A session for a screen to show, without a probe: a key is good once it is pressed, and {@code u} stands for a fault
 * of the program itself.
 */
final class Bench implements Source {
    private final List<Request> asked = new ArrayList<>();
    private volatile Snapshot now;

    Bench(Plan plan) {
        Session fresh = Views.session(Stage.PRESSING);
        now = new Snapshot(
                Views.with(fresh, Session.of(plan).states(), List.of()),
                Diagnosis.NOTHING_YET,
                EventLines.NONE,
                Optional.empty());
    }

    /** Shows a session in this terminal. Arguments: a file to write the process's number to. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(
                Path.of(arguments[0]), String.valueOf(ProcessHandle.current().pid()));
        Optional<String> obstacle = BoardScreen.obstacle(System.getenv());
        if (obstacle.isPresent()) {
            System.out.println(obstacle.get());
            return;
        }
        Setting setting =
                new Setting(Optional.of("Q-01"), Optional.empty(), Look.from(System.getenv(), false, false), true);
        System.out.println(BoardScreen.run(setting, new Bench(Views.QUAYSIDE)));
    }

    @Override
    public Snapshot now() {
        return now;
    }

    @Override
    public synchronized void ask(Request request) {
        asked.add(request);
        if (request instanceof Request.TakeBack) {
            throw new IllegalStateException("the program's own trouble");
        } else if (request instanceof Request.Press press) {
            press(press.key());
        }
    }

    synchronized List<Request> asked() {
        return List.copyOf(asked);
    }

    private void press(int key) {
        Session session = now.session();
        List<KeyState> states = new ArrayList<>(session.states());
        states.set(key, KeyState.GOOD);
        List<Press> presses = new ArrayList<>(session.presses());
        presses.add(new Press(0, Views.pairs(key), OptionalInt.of(key), OptionalInt.empty(), false));
        now = new Snapshot(
                Views.with(session, states, presses), Diagnosis.NOTHING_YET, EventLines.NONE, Optional.empty());
    }
}
