package buzzout.diagnosis;

import buzzout.circuit.Pair;
import buzzout.circuit.Pairs;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says in sentences what was seen. */
final class Because {
    private static final int MOST_NAMES = 8;

    private Because() {}

    /** What was seen that the explanation accounts for and the base does not. */
    static List<String> of(Weighing weighing, Hypothesis base, Hypothesis explanation) {
        Plan plan = weighing.charges().plan();
        List<String> silent = new ArrayList<>();
        Map<String, List<String>> sentences = new LinkedHashMap<>();
        for (Atom atom : base.account().unexplained().keySet()) {
            if (explanation.account().unexplained().containsKey(atom)) {
                continue;
            }
            if (atom instanceof Atom.Quiet) {
                sentences.put("with no key pressed, " + pairs(plan, extra(weighing, base.forecast())), List.of());
            } else if (atom instanceof Atom.Meant meant) {
                String name = plan.keys().get(meant.key()).name();
                if (meant.answer() == Readings.NOTHING) {
                    silent.add(name);
                } else {
                    sentences
                            .computeIfAbsent(
                                    "closes "
                                            + pairs(
                                                    plan,
                                                    weighing.readings()
                                                            .reading(meant.answer())
                                                            .low()),
                                    any -> new ArrayList<>())
                            .add(name);
                }
            } else if (atom instanceof Atom.Covered covered) {
                silent.add(plan.keys().get(covered.key()).name());
            } else if (atom instanceof Atom.Free free) {
                sentences.put(
                        "a press closed "
                                + pairs(
                                        plan,
                                        weighing.readings()
                                                .reading(free.answer())
                                                .low()),
                        List.of());
            }
        }
        List<String> because = new ArrayList<>();
        if (!silent.isEmpty()) {
            because.add("nothing came from " + names(silent));
        }
        sentences.forEach((what, keys) -> because.add(keys.isEmpty() ? what : names(keys) + " " + what));
        return because;
    }

    static String unexplained(Weighing weighing, Atom atom) {
        Plan plan = weighing.charges().plan();
        if (atom instanceof Atom.Quiet) {
            return "something conducts with no key pressed that no single known fault explains";
        } else if (atom instanceof Atom.Meant meant) {
            String name = plan.keys().get(meant.key()).name();
            return meant.answer() == Readings.NOTHING
                    ? "nothing came from " + name + ", perhaps it was not pressed; press it once more"
                    : name + " closed "
                            + pairs(
                                    plan,
                                    weighing.readings().reading(meant.answer()).low())
                            + ", perhaps another key was pressed; press it once more";
        } else if (atom instanceof Atom.Covered covered) {
            return "nothing came from " + plan.keys().get(covered.key()).name()
                    + ", perhaps it was left out; press it once more";
        } else if (atom instanceof Atom.Free free) {
            return "one press closed "
                    + pairs(plan, weighing.readings().reading(free.answer()).low())
                    + ", which no single key explains; press those keys one at a time";
        }
        return "";
    }

    private static Pairs extra(Weighing weighing, Forecast forecast) {
        Pairs seen = weighing.tally().quiet().orElse(Pairs.NONE);
        return seen.minus(weighing.readings().reading(forecast.quiet()).low());
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
        return words.isEmpty() ? "nothing conducts" : names(words);
    }

    private static String name(Plan plan, int pin) {
        return pin < plan.nets().size() ? plan.nets().get(pin).name() : "the spare pin";
    }

    private static String names(List<String> names) {
        if (names.size() > MOST_NAMES) {
            return names.stream().limit(MOST_NAMES - 1).collect(Collectors.joining(", ")) + " and "
                    + (names.size() - MOST_NAMES + 1) + " more";
        }
        return names.size() == 1
                ? names.get(0)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
