package buzzout.diagnosis;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.circuit.Reading;
import buzzout.plan.Key;
import buzzout.plan.Plan;
import buzzout.session.Met;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Says in sentences what was seen. */
final class Because {
    private static final int MOST_NAMES = 8;

    private Because() {}

    /** What was seen of these terms that a forecast without the fault does not account for. */
    static List<String> of(Case board, Set<Term> duties, Forecast without) {
        Plan plan = board.plan();
        List<String> silent = new ArrayList<>();
        List<String> because = new ArrayList<>();
        Map<String, List<String>> sentences = new LinkedHashMap<>();
        for (Term term : duties) {
            if (term instanceof Term.Quiet) {
                because.add(quiet(board, without));
            } else if (term instanceof Term.OfKey of) {
                String name = plan.keys().get(of.key()).spoken();
                for (int answer : board.ledger().meant(of.key())) {
                    if (answer == Readings.NOTHING) {
                        silent.remove(name);
                        silent.add(name);
                    } else if (board.readings().chance(without.answer(of.key()), answer) == 0) {
                        sentences
                                .computeIfAbsent(pairs(board, answer), any -> new ArrayList<>())
                                .add(name);
                    }
                }
                dropouts(board, of.key()).ifPresent(because::add);
            } else if (term instanceof Term.OfTrial of) {
                because.addAll(trial(board, of.trial()));
            } else if (term instanceof Term.OfAnswer of && board.ledger().came().get(of.answer())) {
                if (!isSaidOfAKey(board, duties, of.answer())) {
                    because.add("a press closed " + pairs(board, of.answer()));
                }
            } else if (term instanceof Term.OfAnswer of) {
                givers(plan, without, of.answer()).forEach(silent::add);
            }
        }
        sentences.forEach(
                (what, keys) -> because.add(names(keys) + (keys.size() == 1 ? " closes " : " close ") + what));
        if (!silent.isEmpty()) {
            because.add(0, "nothing came from " + names(silent));
        }
        return because;
    }

    private static Optional<String> dropouts(Case board, int key) {
        int dropouts = board.ledger().dropouts(key);
        return dropouts == 0
                ? Optional.empty()
                : Optional.of(board.plan().keys().get(key).spoken() + ", held, dropped out "
                        + (dropouts == 1 ? "once" : dropouts + " times"));
    }

    /** What came of a trial, each outcome once. */
    private static List<String> trial(Case board, int trial) {
        Trial made = board.forecasts().trials().get(trial);
        String tried = made.says(board.plan());
        if (made instanceof Trial.Touch) {
            return board.ledger().meant(board.plan().keys().size() + trial).stream()
                    .map(answer -> tried + " met "
                            + met(board.plan(), board.readings().reading(answer).low()))
                    .toList();
        }
        return board.ledger().meant(board.plan().keys().size() + trial).stream()
                .map(answer -> tried + ", "
                        + (answer == Readings.NOTHING ? "nothing conducts" : pairs(board, answer) + " conduct"))
                .toList();
    }

    /** In a read-through an odd answer counts at its key's turn and as some key's; once is enough to say. */
    private static boolean isSaidOfAKey(Case board, Set<Term> duties, int answer) {
        for (Term term : duties) {
            if (term instanceof Term.OfKey of && board.ledger().meant(of.key()).contains(answer)) {
                return true;
            }
        }
        return false;
    }

    private static List<String> givers(Plan plan, Forecast forecast, int answer) {
        List<String> names = new ArrayList<>();
        for (Key key : plan.keys()) {
            if (forecast.answer(key.index()) == answer) {
                names.add(key.spoken());
            }
        }
        return names;
    }

    private static String quiet(Case board, Forecast without) {
        Reading expected = board.readings().reading(without.quiet());
        Pairs seen = board.ledger().quiet().orElse(Pairs.NONE);
        Pairs more = seen.minus(expected.low());
        return "with no key pressed, "
                + (more.isEmpty()
                        ? pairs(board.plan(), expected.low().minus(seen)) + " does not conduct"
                        : pairs(board.plan(), more));
    }

    /** What a term says that nothing known explains, and what to do about it. */
    static String unexplained(Case board, Term term, Forecast forecast) {
        Plan plan = board.plan();
        if (term instanceof Term.OfTrial of) {
            return String.join("; ", trial(board, of.trial())) + ", perhaps by a slip; try it once more";
        } else if (term instanceof Term.OfKey of
                && board.ledger().meant(of.key()).isEmpty()) {
            return dropouts(board, of.key()).orElseThrow() + ", perhaps by a slip; flex it once more";
        } else if (term instanceof Term.OfKey of) {
            String name = plan.keys().get(of.key()).spoken();
            Set<String> came = new LinkedHashSet<>();
            for (int answer : board.ledger().meant(of.key())) {
                came.add(
                        answer == Readings.NOTHING
                                ? "nothing came from " + name
                                : name + " closed " + pairs(board, answer));
            }
            return String.join(" and ", came) + ", perhaps by a slip; press it once more";
        } else if (term instanceof Term.OfAnswer of && board.ledger().came().get(of.answer())) {
            return "a press closed " + pairs(board, of.answer())
                    + ", which no single key explains; press those keys again, one at a time";
        } else if (term instanceof Term.OfAnswer of) {
            return "nothing came from " + names(givers(plan, forecast, of.answer()))
                    + ", perhaps left out; press it once more";
        }
        return quiet(board, forecast) + ", which no known fault explains; do the quiet check once more, hands off";
    }

    /** What a touch met, such as {@code R2}, or {@code R2 through a diode}. */
    static String met(Plan plan, Pairs pairs) {
        Met met = Met.of(plan, pairs);
        List<String> nets = new ArrayList<>();
        met.bothWays().forEach(net -> nets.add(plan.nets().get(net).name()));
        met.towards().forEach(net -> nets.add(plan.nets().get(net).name() + " through a diode"));
        met.from().forEach(net -> nets.add(plan.nets().get(net).name() + " through a diode"));
        return nets.isEmpty() ? "nothing" : names(nets);
    }

    static String pairs(Case board, int answer) {
        return pairs(board.plan(), board.readings().reading(answer).low());
    }

    /** Such as {@code R1→C4 and R1→C5}; a pair that conducts both ways is written once, with ↔. */
    static String pairs(Plan plan, Pairs pairs) {
        List<String> words = new ArrayList<>();
        for (Pair pair : pairs.list()) {
            boolean both = pairs.contains(pair.turned());
            if (!both || pair.low() < pair.reads()) {
                words.add(name(plan, pair.low()) + (both ? "↔" : "→") + name(plan, pair.reads()));
            }
        }
        return words.isEmpty() ? "nothing" : names(words);
    }

    private static String name(Plan plan, int pin) {
        return pin < plan.nets().size() ? plan.nets().get(pin).name() : "the spare pin";
    }

    static String names(List<String> names) {
        if (names.size() > MOST_NAMES) {
            return String.join(", ", names.subList(0, MOST_NAMES - 1)) + " and " + (names.size() - MOST_NAMES + 1)
                    + " more";
        }
        return names.size() == 1
                ? names.get(0)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
