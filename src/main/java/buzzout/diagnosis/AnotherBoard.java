package buzzout.diagnosis;

/**
 * The chance that the evidence comes from a board of another plan altogether.
 *
 * <p>Such a board answers a press with anything, which costs {@link #ANY_ANSWER} each time; of the quiet check, of
 * trials and of levels that may read either way it explains neither more nor less. Both numbers are judgement.
 */
final class AnotherBoard {
    private static final double LOG_PRIOR = Math.log(1e-15);

    /** One of some 150 pairs. */
    private static final double ANY_ANSWER = Math.log(1 / 150.0);

    /** Fewer presses that fit nothing are slips, or a board that is very wrong. */
    private static final int FEWEST_PRESSES = 20;

    /** From here on it is said before anything else. */
    static final double WORTH_TELLING = 0.1;

    static final String WARNING = "what came fits this plan so badly that it may be from another board or plan; "
            + "make sure that this plan is this board's before you solder anything";

    private AnotherBoard() {}

    /** How probable it is, against the best explanation under this plan. */
    static double probability(Ledger ledger, Hypothesis explanation) {
        if (ledger.presses() < FEWEST_PRESSES) {
            return 0;
        }
        double other = LOG_PRIOR
                + ledger.presses() * ANY_ANSWER
                + ledger.quietCost(explanation.forecast().quiet());
        for (int asked = 0; asked < explanation.forecast().asked(); asked++) {
            int answer = explanation.forecast().answer(asked);
            other += asked < ledger.keys() ? ledger.askedDoubt(asked, answer) : ledger.askedCost(asked, answer);
        }
        return 1 / (1 + Math.exp(explanation.score() - other));
    }
}
