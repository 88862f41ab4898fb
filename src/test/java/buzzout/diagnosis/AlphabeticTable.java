package buzzout.diagnosis;

import java.util.Arrays;

/** What trees over leaves in order cost, worked out without any cleverness. */
final class AlphabeticTable {
    private AlphabeticTable() {}

    /** The least sum of weight times depth over all trees: every interval, every first cut, O(n³). */
    static double cost(double[] weights) {
        int leaves = weights.length;
        double[][] least = new double[leaves + 1][leaves + 1];
        double[] upTo = new double[leaves + 1];
        for (int leaf = 0; leaf < leaves; leaf++) {
            upTo[leaf + 1] = upTo[leaf] + weights[leaf];
        }
        for (int length = 2; length <= leaves; length++) {
            for (int from = 0; from + length <= leaves; from++) {
                int to = from + length;
                double best = Double.POSITIVE_INFINITY;
                for (int cut = from + 1; cut < to; cut++) {
                    best = Math.min(best, least[from][cut] + least[cut][to]);
                }
                least[from][to] = best + upTo[to] - upTo[from];
            }
        }
        return leaves == 0 ? 0 : least[0][leaves];
    }

    /** The sum of weight times depth where each cut halves the number of leaves. */
    static double halving(double[] weights) {
        if (weights.length < 2) {
            return 0;
        }
        int cut = weights.length / 2;
        return Arrays.stream(weights).sum()
                + halving(Arrays.copyOfRange(weights, 0, cut))
                + halving(Arrays.copyOfRange(weights, cut, weights.length));
    }

    /** In bits a leaf. */
    static double entropy(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights)
                .filter(weight -> weight > 0)
                .map(weight -> -weight / sum * Math.log(weight / sum) / Math.log(2))
                .sum();
    }
}
