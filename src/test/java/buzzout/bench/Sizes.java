package buzzout.bench;

import buzzout.diagnosis.Grids;
import buzzout.plan.Controllers;
import buzzout.plan.ExamplePlan;
import buzzout.plan.Plan;
import java.util.Arrays;
import java.util.List;

/** Boards of four sizes, and rows that tell a figure of each, with the exponent of the number of keys. */
final class Sizes {
    static final List<Plan> BOARDS = List.of(
            ExamplePlan.quayside(), Grids.keys75(), Grids.plain8x16(), Grids.plain(Controllers.ATMEGA2560, 16, 32));

    private Sizes() {}

    /** Of one value for each board. */
    static void add(List<Row> rows, String what, String unit, double[] values) {
        double[] keys = BOARDS.stream().mapToDouble(plan -> plan.keys().size()).toArray();
        for (int size = 0; size < values.length; size++) {
            rows.add(Row.of("%s, %.0f keys".formatted(what, keys[size]), values[size], unit));
        }
        rows.add(Row.of(what + ", exponent", exponent(keys, values), ""));
    }

    /** The slope of a straight line through both logarithms, by least squares. */
    private static double exponent(double[] sizes, double[] values) {
        double[] x = Arrays.stream(sizes).map(Math::log).toArray();
        double[] y = Arrays.stream(values).map(Math::log).toArray();
        double meanX = Arrays.stream(x).average().orElseThrow();
        double meanY = Arrays.stream(y).average().orElseThrow();
        double above = 0;
        double below = 0;
        for (int i = 0; i < x.length; i++) {
            above += (x[i] - meanX) * (y[i] - meanY);
            below += (x[i] - meanX) * (x[i] - meanX);
        }
        return above / below;
    }
}
