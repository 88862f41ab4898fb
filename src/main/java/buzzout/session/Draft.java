package buzzout.session;

import buzzout.circuit.Fault;
import buzzout.circuit.Pairs;
import buzzout.probe.Identity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A session being changed by one event; it never leaves the fold. */
final class Draft {
    final Session before;
    Stage stage;
    Optional<Identity> probe;
    Optional<String> port;
    Pairs quiet;
    Pairs now;
    Growing<Press> presses;
    boolean everyKeyPressed;
    OptionalInt called;
    Optional<ReadThrough> readThrough;
    Lead lead;
    Optional<RollCall> rollCall;
    final List<Fault> repairs;
    Optional<Press> slip;
    FlexCheck flex;
    AllAtOnce allAtOnce;
    Optional<String> linkTrouble;
    long lostChanges;
    long garbledLines;

    Draft(Session before) {
        this.before = before;
        stage = before.stage();
        probe = before.probe();
        port = before.port();
        quiet = before.quiet();
        now = before.now();
        presses = Growing.of(before.presses());
        everyKeyPressed = before.everyKeyPressed();
        called = before.called();
        readThrough = before.readThrough();
        lead = before.lead();
        rollCall = before.rollCall();
        repairs = new ArrayList<>(before.repairs());
        slip = before.slip();
        flex = before.flex();
        allAtOnce = before.allAtOnce();
        linkTrouble = before.linkTrouble();
        lostChanges = before.lostChanges();
        garbledLines = before.garbledLines();
    }

    /** Whether a key is down, as far as anybody can see. */
    boolean keyIsDown() {
        return !now.minus(quiet).isEmpty();
    }

    Optional<Press> lastPress() {
        return presses.isEmpty() ? Optional.empty() : Optional.of(presses.get(presses.size() - 1));
    }

    boolean isReading() {
        return readThrough.filter(ReadThrough::isRunning).isPresent();
    }

    void replaceLastPress(Press press) {
        presses = presses.withLast(press);
    }

    Session done() {
        return new Session(
                before.plan(),
                stage,
                probe,
                port,
                quiet,
                now,
                presses,
                everyKeyPressed,
                called,
                readThrough,
                lead,
                rollCall,
                repairs,
                slip,
                flex,
                allAtOnce,
                linkTrouble,
                lostChanges,
                garbledLines);
    }
}
