package buzzout.diagnosis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * States in a row that tests of equal effort cut in two, each at another place, as touches do along a net.
 *
 * @param groups the states between one cut and the next, in order; no test tells those of one group apart
 * @param effort of each cut
 */
record Chain(List<Long> groups, double effort) {
    /**
     * The chain that the tests of least effort cut, if they are one and the others are not worth their effort: what a
     * dearer test tells of one group, the cuts on both sides of it tell as well.
     */
    static Optional<Chain> of(List<Sequence.Test> tests, long left) {
        double least = tests.stream().mapToDouble(Sequence.Test::effort).min().orElse(0);
        List<Sequence.Test> cuts =
                tests.stream().filter(test -> test.effort() == least).toList();
        boolean othersAreDear = tests.stream().allMatch(test -> test.effort() == least || test.effort() >= 2 * least);
        if (!othersAreDear) {
            return Optional.empty();
        }
        return states(left)
                .mapToObj(end -> cutsFrom(end, cuts, left))
                .flatMap(Optional::stream)
                .map(nested -> new Chain(groups(nested, left), least))
                .filter(chain -> chain.keepsTogether(tests))
                .findFirst();
    }

    private static LongStream states(long left) {
        return LongStream.range(0, Long.SIZE).filter(state -> (left >>> state & 1) != 0);
    }

    /** For each cut the states on the side of this end, smallest first, if each holds the one before. */
    private static Optional<List<Long>> cutsFrom(long end, List<Sequence.Test> cuts, long left) {
        List<Long> sides = cuts.stream()
                .map(cut -> states(left)
                        .filter(state -> cut.outcomes()
                                .get((int) state)
                                .equals(cut.outcomes().get((int) end)))
                        .map(state -> 1L << state)
                        .sum())
                .distinct()
                .sorted(Comparator.comparingInt(Long::bitCount))
                .toList();
        for (int next = 1; next < sides.size(); next++) {
            if ((sides.get(next - 1) & ~sides.get(next)) != 0) {
                return Optional.empty();
            }
        }
        boolean inTwo = cuts.stream()
                .allMatch(cut -> states(left)
                                .mapToObj(state -> cut.outcomes().get((int) state))
                                .distinct()
                                .count()
                        == 2);
        return inTwo ? Optional.of(sides) : Optional.empty();
    }

    private static List<Long> groups(List<Long> nested, long left) {
        java.util.ArrayList<Long> groups = new java.util.ArrayList<>();
        long before = 0;
        for (long side : nested) {
            groups.add(side & ~before);
            before = side;
        }
        groups.add(left & ~before);
        return groups;
    }

    private boolean keepsTogether(List<Sequence.Test> tests) {
        return tests.stream()
                .allMatch(test -> groups.stream()
                        .allMatch(group -> states(group)
                                        .mapToObj(state -> test.outcomes().get((int) state))
                                        .distinct()
                                        .count()
                                == 1));
    }

    /** The least expected effort, weighted by the states' weights. */
    double effort(double[] weights, double untold) {
        double[] ofGroups = groups.stream()
                .mapToDouble(group ->
                        states(group).mapToDouble(state -> weights[(int) state]).sum())
                .toArray();
        double sum = effort * AlphabeticTree.cost(ofGroups);
        for (int group = 0; group < ofGroups.length; group++) {
            sum += Long.bitCount(groups.get(group)) > 1 ? untold * ofGroups[group] : 0;
        }
        return sum;
    }
}
