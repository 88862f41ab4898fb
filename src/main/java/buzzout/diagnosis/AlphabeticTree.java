package buzzout.diagnosis;

import java.util.ArrayList;
import java.util.List;

/**
 * The binary tree over leaves in a given order whose sum of weight times depth is least: which joint of a chain to touch
 * first, when its links are the leaves and a touch tells on which side of it the open one is.
 *
 * <p>The algorithm of Garsia and Wachs (A new algorithm for minimum cost binary trees, SIAM J. Comput. 6:622, 1977; Knuth,
 * TAOCP vol. 3, 6.2.2, algorithm G), in its plain O(n²) form.
 */
final class AlphabeticTree {
    private final double weight;
    private final List<AlphabeticTree> parts;
    private int depth;

    private AlphabeticTree(double weight, List<AlphabeticTree> parts) {
        this.weight = weight;
        this.parts = parts;
    }

    /** The depth of each leaf; weights must not be negative. */
    static int[] depths(double[] weights) {
        if (weights.length == 0) {
            return new int[0];
        }
        List<AlphabeticTree> leaves = new ArrayList<>();
        for (double weight : weights) {
            leaves.add(new AlphabeticTree(weight, List.of()));
        }
        List<AlphabeticTree> row = new ArrayList<>(leaves);
        while (row.size() > 1) {
            combine(row);
        }
        row.get(0).sink(0);
        return leaves.stream().mapToInt(leaf -> leaf.depth).toArray();
    }

    /** Combines the leftmost two whose left weighs no more than what follows, and moves them left past lighter ones. */
    private static void combine(List<AlphabeticTree> row) {
        int at = 0;
        while (at + 2 < row.size() && row.get(at).weight > row.get(at + 2).weight) {
            at++;
        }
        AlphabeticTree right = row.remove(at + 1);
        AlphabeticTree left = row.remove(at);
        AlphabeticTree both = new AlphabeticTree(left.weight + right.weight, List.of(left, right));
        while (at > 0 && row.get(at - 1).weight < both.weight) {
            at--;
        }
        row.add(at, both);
    }

    private void sink(int to) {
        depth = to;
        parts.forEach(part -> part.sink(to + 1));
    }

    /** The sum of weight times depth. */
    static double cost(double[] weights) {
        int[] depths = depths(weights);
        double cost = 0;
        for (int leaf = 0; leaf < weights.length; leaf++) {
            cost += weights[leaf] * depths[leaf];
        }
        return cost;
    }
}
