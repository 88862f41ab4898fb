package buzzout.diagnosis;

import buzzout.circuit.Fault;
import buzzout.plan.Joint;
import buzzout.plan.Key;
import buzzout.plan.Net;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** What would tell the explanations of a finding apart, and at what expected effort. */
final class Settle {
    /** A finding this sure needs no more proof before the iron. */
    private static final double SURE = 0.95;

    /** Explanations this much less probable than the best are not worth a step. */
    private static final double WORTH_TELLING = 0.005;

    /** Stands between a step and what it tells, and in a reading between its place and its meaning. */
    private static final String TELLS = ": ";

    private final Case board;
    private final Hypothesis base;
    private final List<Hypothesis> states;
    private final Map<Step, Sequence.Test> tests = new LinkedHashMap<>();
    private final Sequence sequence;
    private final Optional<String> best;

    Settle(Case board, Strand strand) {
        this.board = board;
        base = strand.base();
        states = states(strand);
        double top = states.get(0).score();
        presses();
        touches();
        readings();
        double[] weights = new double[states.size()];
        for (int state = 0; state < weights.length; state++) {
            weights[state] = Math.exp(states.get(state).score() - top);
        }
        sequence = new Sequence(weights, List.copyOf(tests.values()), Labour.UNSOLDERING);
        best = leastWithFirst().map(this::says).or(this::firstByMeter);
    }

    /** The explanations that a step is to tell apart, most probable first. */
    static List<Hypothesis> states(Strand strand) {
        double best = strand.result().best().score();
        List<Hypothesis> states = new ArrayList<>();
        for (Hypothesis state : strand.result().weighed()) {
            if (states.size() < Sequence.MOST_STATES && Math.exp(state.score() - best) >= WORTH_TELLING) {
                states.add(state);
            }
        }
        return states;
    }

    static boolean isSure(List<Suspect> suspects) {
        return suspects.size() == 1 && suspects.get(0).probability() >= SURE;
    }

    private void presses() {
        for (Key key : board.plan().keys()) {
            add(
                    new Step.Press(key.index()),
                    Labour.PRESS,
                    state -> state.forecast().answer(key.index()));
        }
    }

    private void touches() {
        if (board.plan().sparePin().isEmpty()) {
            return;
        }
        List<Joint> joints = joints();
        Map<Hypothesis, int[]> read = new LinkedHashMap<>();
        for (Hypothesis state : states) {
            read.put(state, board.forecasts().touches(state.charged(), joints));
        }
        for (int index = 0; index < joints.size(); index++) {
            int joint = index;
            add(
                    new Step.Touch(joints.get(joint)),
                    Labour.TOUCH,
                    state -> Objects.requireNonNull(read.get(state))[joint]);
        }
    }

    /** The joints of the nets that the explanations disagree about, each net's in solder order. */
    private List<Joint> joints() {
        Plan plan = board.plan();
        long nets = 0;
        for (Hypothesis state : states) {
            BitSet added = added(state);
            for (int fault = added.nextSetBit(0); fault >= 0; fault = added.nextSetBit(fault + 1)) {
                nets |= board.charges().nets(fault);
            }
        }
        List<Joint> joints = new ArrayList<>();
        for (long left = nets; left != 0; left &= left - 1) {
            Net net = plan.nets().get(Long.numberOfTrailingZeros(left));
            for (int at = 0; at < net.joints().size(); at++) {
                joints.add(net.joint(at));
            }
        }
        return joints;
    }

    private void readings() {
        Map<String, Set<Hypothesis>> read = new LinkedHashMap<>();
        for (Hypothesis state : states) {
            for (String place : places(state)) {
                read.computeIfAbsent(place, any -> new HashSet<>()).add(state);
            }
        }
        for (Map.Entry<String, Set<Hypothesis>> place : read.entrySet()) {
            add(
                    new Step.Measure(place.getKey()),
                    Labour.READING,
                    state -> place.getValue().contains(state) ? 1 : 0);
        }
    }

    /** Where a meter would tell something of a state's faults. */
    private List<String> places(Hypothesis state) {
        List<String> places = new ArrayList<>();
        for (Fault fault : faults(state)) {
            places.add(fault.meter(board.plan()));
        }
        return places;
    }

    private interface Outcome {
        int in(Hypothesis state);
    }

    /** Keeps a step that has not the same outcome everywhere. */
    private void add(Step step, double effort, Outcome outcome) {
        List<Integer> outcomes = new ArrayList<>();
        boolean same = true;
        for (Hypothesis state : states) {
            outcomes.add(outcome.in(state));
            same &= outcomes.get(0).equals(outcomes.get(outcomes.size() - 1));
        }
        if (!same) {
            tests.put(step, new Sequence.Test(effort, outcomes));
        }
    }

    Set<Step> steps() {
        return tests.keySet();
    }

    double effortOf(Step step) {
        return Objects.requireNonNull(tests.get(step)).effort();
    }

    /** The expected effort until one explanation is left. */
    double effort() {
        return sequence.effort();
    }

    double effortWithFirst(Step step) {
        return sequence.effortWithFirst(Objects.requireNonNull(tests.get(step)));
    }

    /** The best step, or where to look closely if nothing tells the explanations apart. */
    Optional<String> best() {
        return best;
    }

    private Optional<Step> leastWithFirst() {
        Optional<Step> best = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (Step step : tests.keySet()) {
            double effort = effortWithFirst(step);
            if (best.isEmpty() || effort < least) {
                best = Optional.of(step);
                least = effort;
            }
        }
        return best;
    }

    private Optional<String> firstByMeter() {
        List<String> places = places(states.get(0));
        return places.isEmpty() ? Optional.empty() : Optional.of(byMeter(places.get(0)));
    }

    private String says(Step step) {
        return does(step) + TELLS + tells(step);
    }

    private static String byMeter(String where) {
        return "unplug, then buzz out " + where;
    }

    /** What to do, such as {@code press Q}. */
    String does(Step step) {
        if (step instanceof Step.Press press) {
            return "press " + board.plan().keys().get(press.key()).spoken();
        } else if (step instanceof Step.Touch touch) {
            return "touch " + touch.joint().says(board.plan());
        }
        return byMeter(place((Step.Measure) step));
    }

    /** What each outcome would mean. */
    String tells(Step step) {
        if (step instanceof Step.Press) {
            return outcomes(
                    step,
                    answer -> answer == Readings.NOTHING
                            ? "if nothing comes, "
                            : "if it closes " + Because.pairs(board, answer) + ", ");
        } else if (step instanceof Step.Touch) {
            return outcomes(
                    step,
                    answer -> "if the lead meets "
                            + Because.met(
                                    board.plan(),
                                    board.readings().reading(answer).low()) + ", ");
        }
        Step.Measure measure = (Step.Measure) step;
        return measure.where().substring(place(measure).length() + TELLS.length());
    }

    private static String place(Step.Measure measure) {
        return measure.where().substring(0, measure.where().indexOf(TELLS));
    }

    private interface Words {
        String of(int outcome);
    }

    private String outcomes(Step step, Words words) {
        List<Integer> outcomes = Objects.requireNonNull(tests.get(step)).outcomes();
        Map<String, List<Hypothesis>> byWords = new LinkedHashMap<>();
        for (int state = 0; state < outcomes.size(); state++) {
            byWords.computeIfAbsent(words.of(outcomes.get(state)), any -> new ArrayList<>())
                    .add(states.get(state));
        }
        List<String> meanings = new ArrayList<>();
        for (Map.Entry<String, List<Hypothesis>> outcome : byWords.entrySet()) {
            meanings.add(outcome.getKey() + meaning(outcome.getValue()));
        }
        return String.join("; ", meanings);
    }

    private String meaning(List<Hypothesis> group) {
        List<String> first = new ArrayList<>();
        for (Fault fault : faults(group.get(0))) {
            first.add(fault.says(board.plan()));
        }
        String named = first.isEmpty() ? "what was seen was a slip" : String.join(" and ", first);
        return group.size() == 1 ? named : named + ", or " + (group.size() - 1) + " more";
    }

    private List<Fault> faults(Hypothesis state) {
        return board.charges().faults(added(state));
    }

    private BitSet added(Hypothesis state) {
        BitSet added = (BitSet) state.charged().clone();
        added.andNot(base.charged());
        return added;
    }
}
