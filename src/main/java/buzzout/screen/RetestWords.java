package buzzout.screen;

import buzzout.circuit.Fault;
import buzzout.session.KeyState;
import buzzout.session.Retest;
import buzzout.session.RollCall;
import buzzout.session.Session;

/** What came of a retest, in words. */
final class RetestWords {
    private RetestWords() {}

    static String of(Session session, Retest.Result result) {
        return "Retest: "
                + switch (result) {
                    case WHOLE -> "the board is whole again, every key is good.";
                    case AS_PLANNED -> asPlanned(session);
                    case RETURNED -> "the finding returned: " + repaired(session) + ".";
                    case OTHERWISE -> "not as planned yet, but otherwise than before; see the findings.";
                };
    }

    private static String asPlanned(Session session) {
        int untested = session.count(KeyState.UNTESTED);
        boolean onlyUntested =
                session.count(KeyState.GOOD) + untested == session.plan().keys().size()
                        && session.quiet().isEmpty();
        return onlyUntested
                ? "that is repaired; " + untested + (untested == 1 ? " key is" : " keys are") + " still untested."
                : "that is repaired; something else is still wrong, see the findings.";
    }

    private static String repaired(Session session) {
        return session.rollCall()
                .map(RollCall::repaired)
                .flatMap(faults -> faults.stream().findFirst())
                .map((Fault fault) -> fault.says(session.plan()))
                .orElse("");
    }
}
