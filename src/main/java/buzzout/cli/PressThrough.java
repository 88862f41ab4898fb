package buzzout.cli;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.probe.SimulatedBoard;
import buzzout.session.Action;
import buzzout.session.Session;
import buzzout.session.Stage;
import java.util.OptionalInt;

/** Fingers that press every key of a simulated board once, as it is called or in reading order. */
final class PressThrough {
    private static final int HELD_MILLIS = 120;
    private static final int RISE_MILLIS = 60;
    private static final int PAUSE_MILLIS = 120;
    private static final int LOOK_MILLIS = 50;

    /** What the fingers' owner says meanwhile. */
    enum Way {
        /** The program names each key, and is told when nothing came. */
        ROLL_CALL,
        /** Any key, told when nothing came. */
        TELLING,
        /** Any key, and in the end only that all have been pressed. */
        FREE
    }

    /** Where the pressing happens, in real or in simulated time. */
    interface Place {
        /** Lets time pass, and all that happened reach the session; false when the pressing is over. */
        boolean pass(int millis) throws InterruptedException;

        void tell(Action action);

        Session session();
    }

    private final Plan plan;
    private final SimulatedBoard board;
    private final Place place;
    private final Way way;

    PressThrough(Plan plan, SimulatedBoard board, Place place, Way way) {
        this.plan = plan;
        this.board = board;
        this.place = place;
        this.way = way;
    }

    void run() throws InterruptedException {
        while (place.session().stage() != Stage.PRESSING) {
            if (!place.pass(LOOK_MILLIS)) {
                return;
            }
        }
        if (way == Way.ROLL_CALL) {
            answerCalls();
            return;
        }
        for (Key key : plan.keys()) {
            if (!press(key)) {
                return;
            }
        }
        if (way == Way.FREE) {
            place.tell(new Action.AllPressed());
        }
    }

    private void answerCalls() throws InterruptedException {
        place.tell(new Action.RollCallBegun());
        boolean goesOn = true;
        while (goesOn && !place.session().toCall().isEmpty()) {
            OptionalInt called = place.session().called();
            goesOn = called.isPresent() ? press(plan.keys().get(called.getAsInt())) : place.pass(LOOK_MILLIS);
        }
    }

    private boolean press(Key key) throws InterruptedException {
        boolean goesOn = place.pass(PAUSE_MILLIS);
        int before = place.session().presses().size();
        board.press(key);
        goesOn &= place.pass(HELD_MILLIS);
        board.release(key);
        goesOn &= place.pass(RISE_MILLIS);
        if (goesOn && way != Way.FREE && place.session().presses().size() == before) {
            place.tell(new Action.NothingCame(key.index()));
        }
        return goesOn;
    }
}
