package buzzout.diagnosis;

import buzzout.plan.Key;
import buzzout.plan.Plan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What would tell suspects apart. */
final class Settle {
    private Settle() {}

    /** The press whose outcomes divide the suspects most evenly by probability; else a reading with a meter. */
    static Optional<String> next(Case board, List<Suspect> suspects, Hypothesis base) {
        if (suspects.size() < 2) {
            return Optional.empty();
        }
        Plan plan = board.plan();
        Key bestKey = null;
        double bestDoubt = Double.POSITIVE_INFINITY;
        List<Forecast> forecasts =
                suspects.stream().map(suspect -> forecast(board, base, suspect)).toList();
        for (Key key : plan.keys()) {
            Map<Integer, Double> outcomes = new HashMap<>();
            for (int i = 0; i < suspects.size(); i++) {
                outcomes.merge(
                        forecasts.get(i).answer(key.index()), suspects.get(i).probability(), Double::sum);
            }
            double doubt = outcomes.values().stream().mapToDouble(p -> p * p).sum();
            if (outcomes.size() > 1 && doubt < bestDoubt) {
                bestDoubt = doubt;
                bestKey = key;
            }
        }
        return bestKey == null ? Optional.of(byMeter(plan, suspects)) : Optional.of("press " + bestKey.spoken());
    }

    private static Forecast forecast(Case board, Hypothesis base, Suspect suspect) {
        return board.forecasts()
                .with(base.charged(), base.forecast(), board.charges().number(suspect.fault()));
    }

    private static String byMeter(Plan plan, List<Suspect> suspects) {
        return "unplug, then buzz out with a meter: "
                + suspects.stream()
                        .map(suspect -> suspect.fault().says(plan))
                        .limit(3)
                        .collect(Collectors.joining("; or "));
    }
}
