package buzzout.diagnosis;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What would tell suspects apart. */
final class Settle {
    /** A finding this sure needs no more proof before the iron. */
    private static final double SURE = 0.95;

    private static final int MOST_READINGS = 2;

    private final Case board;
    private final Hypothesis base;
    private final List<Suspect> suspects;

    private Settle(Case board, Hypothesis base, List<Suspect> suspects) {
        this.board = board;
        this.base = base;
        this.suspects = suspects;
    }

    /** The press whose outcomes divide the suspects most evenly by probability; else readings with a meter. */
    static Optional<String> next(Case board, List<Suspect> suspects, List<Suspect> otherwise, Hypothesis base) {
        if (suspects.size() == 1 && suspects.get(0).probability() >= SURE) {
            return Optional.empty();
        }
        List<Suspect> all = Stream.concat(suspects.stream(), otherwise.stream()).toList();
        Settle settle = new Settle(board, base, all);
        return Optional.of(settle.byPress().orElseGet(settle::byMeter));
    }

    private Optional<String> byPress() {
        Key best = null;
        double leastDoubt = 1 - 1e-9;
        for (Key key : board.plan().keys()) {
            Map<Integer, List<Suspect>> outcomes = outcomes(key);
            double all = suspects.stream().mapToDouble(Suspect::probability).sum();
            double doubt = outcomes.values().stream()
                    .mapToDouble(group -> Math.pow(
                            group.stream().mapToDouble(Suspect::probability).sum() / all, 2))
                    .sum();
            if (doubt < leastDoubt && !board.ledger().isNamed(key.index())) {
                leastDoubt = doubt;
                best = key;
            }
        }
        return Optional.ofNullable(best).map(this::press);
    }

    /** The suspects by what a key would answer under each. */
    private Map<Integer, List<Suspect>> outcomes(Key key) {
        return suspects.stream()
                .collect(Collectors.groupingBy(
                        suspect -> forecast(suspect).answer(key.index()), LinkedHashMap::new, Collectors.toList()));
    }

    private Forecast forecast(Suspect suspect) {
        return board.forecasts()
                .with(base.charged(), base.forecast(), board.charges().number(suspect.fault()));
    }

    private String press(Key key) {
        return "press " + key.spoken() + ": "
                + outcomes(key).entrySet().stream()
                        .map(outcome -> (outcome.getKey() == Readings.NOTHING
                                        ? "if nothing comes, "
                                        : "if it closes " + Because.pairs(board, outcome.getKey()) + ", ")
                                + says(outcome.getValue()))
                        .collect(Collectors.joining("; "));
    }

    private String says(List<Suspect> group) {
        Plan plan = board.plan();
        String first = group.get(0).fault().says(plan);
        return group.size() == 1 ? first : first + ", or " + (group.size() - 1) + " more";
    }

    private String byMeter() {
        Plan plan = board.plan();
        return "unplug, then buzz out "
                + suspects.stream()
                        .map(suspect -> suspect.fault().meter(plan))
                        .distinct()
                        .limit(MOST_READINGS)
                        .collect(Collectors.joining("; and "));
    }
}
