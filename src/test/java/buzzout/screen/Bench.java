package buzzout.screen;

import buzzout.circuit.Circuit;
import buzzout.plan.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A faultless board's session for a screen to show, without a probe; {@code u} makes trouble in the program itself. */
final class Bench implements Source {
    private final List<Request> asked = new ArrayList<>();
    private final Sitting sitting;
    private volatile Snapshot now;

    Bench(Plan plan) {
        sitting = new Sitting(plan, Circuit.of(plan)).found().quietCheckDone();
        now = sitting.snapshot();
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
        System.out.println(BoardScreen.run(Opening.begin(() -> {}), setting, new Bench(Views.QUAYSIDE), Signals.on()));
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
            now = sitting.press(press.key()).snapshot();
        }
    }

    synchronized List<Request> asked() {
        return List.copyOf(asked);
    }
}
