package buzzout.diagnosis;

import buzzout.plan.NetKind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Unexplained terms that may have one cause, because their keys sit on one net. */
final class Alike {
    private Alike() {}

    /** The unexplained terms on this term's row, and those on its column, where there are others than itself. */
    static List<Set<Term>> terms(Case board, Hypothesis hypothesis, Term term) {
        if (!(term instanceof Term.OfKey of)) {
            return List.of();
        }
        Set<Term> costly = board.costs(hypothesis).keySet();
        List<Set<Term>> terms = new ArrayList<>();
        for (NetKind kind : NetKind.values()) {
            Set<Term> alike =
                    onNet(board, costly, board.plan().keys().get(of.key()).net(kind), kind);
            if (alike.size() > 1) {
                terms.add(alike);
            }
        }
        return terms;
    }

    private static Set<Term> onNet(Case board, Set<Term> costly, int net, NetKind kind) {
        Set<Term> alike = new HashSet<>();
        for (Term term : costly) {
            if (term instanceof Term.OfKey of
                    && board.plan().keys().get(of.key()).net(kind) == net) {
                alike.add(term);
            }
        }
        return alike;
    }
}
