package buzzout.report;

import buzzout.diagnosis.Diagnosis;
import buzzout.session.AllAtOnce;
import buzzout.session.KeyState;
import buzzout.session.Session;

/** What a session says of the board as a whole. */
public enum Verdict {
    /** Every key is good and nothing else was found. */
    GOOD("good"),
    /** Nothing was found, and some keys are untested. */
    UNFINISHED("unfinished"),
    /** There are findings. */
    FAULTY("faulty"),
    /** Nothing else was found, and a key bounced longer than the plan allows. */
    BOUNCING("bouncing"),
    /** A key, or a combination of keys, is not as it should be, and no finding says why. */
    UNEXPLAINED("unexplained");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    static Verdict of(Session session, Diagnosis diagnosis) {
        if (!diagnosis.findings().isEmpty()) {
            return FAULTY;
        }
        int good = session.count(KeyState.GOOD);
        int untested = session.count(KeyState.UNTESTED);
        boolean company = true;
        for (AllAtOnce.Tried tried : session.allAtOnce().tried()) {
            company = company && HeldText.isAsComputed(session, tried);
        }
        if (good + untested < session.states().size() || !company) {
            return UNEXPLAINED;
        }
        if (!session.bounces().overLimit().isEmpty()) {
            return BOUNCING;
        }
        return untested > 0 ? UNFINISHED : GOOD;
    }

    /** The word in JSON. */
    public String word() {
        return word;
    }

    /** Whether something is wrong with the board. */
    public boolean isWrong() {
        return this == FAULTY || this == UNEXPLAINED || this == BOUNCING;
    }
}
