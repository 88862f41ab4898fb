package buzzout.diagnosis;

import buzzout.circuit.Catalogue;
import buzzout.circuit.Fault;
import buzzout.circuit.FaultKind;
import buzzout.circuit.Part;
import buzzout.plan.Plan;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How much to try, and on which faults. {@code mvn test -Dbuzzout.campaign=full} tries everything, {@code brief} hardly
 * anything: what is left of a campaign when it is run again for each mutant.
 */
public final class Campaign {
    private static final String WANTED = System.getProperty("buzzout.campaign", "usual");
    private static final boolean FULL = WANTED.equals("full");
    private static final boolean BRIEF = WANTED.equals("brief");
    private static final int BRIEFER = 12;

    private Campaign() {}

    static int size(int usual, int full) {
        return FULL ? full : BRIEF ? Math.max(1, usual / BRIEFER) : usual;
    }

    static boolean isBrief() {
        return BRIEF;
    }

    static boolean isFull() {
        return FULL;
    }

    /** So many faults, all as probable as each other, none in a part that another spoils. */
    static List<Fault> anyFaults(Random random, Plan plan, int count) {
        List<Fault> all = new ArrayList<>(Catalogue.of(plan));
        Collections.shuffle(all, random);
        return firstThatFit(all, count);
    }

    /** So many lasting faults as the priors have them, none in a part that another spoils. */
    public static List<Fault> likelyFaults(Random random, Plan plan, Priors priors, int count) {
        record Drawn(Fault fault, double arrival) {}
        // The first to arrive of exponential waits, each at its own rate, is a draw by weight (Efraimidis & Spirakis).
        List<Fault> inOrder = Catalogue.of(plan).stream()
                .filter(fault -> fault.kind() != FaultKind.COMES_AND_GOES) // One press does not show that it returns.
                .map(fault ->
                        new Drawn(fault, -Math.log(1 - random.nextDouble()) / Math.exp(priors.logOdds(fault.kind()))))
                .sorted(java.util.Comparator.comparingDouble(Drawn::arrival))
                .map(Drawn::fault)
                .toList();
        return firstThatFit(inOrder, count);
    }

    private static List<Fault> firstThatFit(List<Fault> faults, int count) {
        Set<Part> spoiled = new HashSet<>();
        return faults.stream()
                .filter(fault -> Collections.disjoint(spoiled, fault.parts()) && spoiled.addAll(fault.parts()))
                .limit(count)
                .toList();
    }

    static String codes(Plan plan, List<Fault> faults) {
        return faults.stream().map(fault -> fault.code(plan)).sorted().collect(Collectors.joining(" ", "[", "]"));
    }
}
