package costrel.harvest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A small linear program solved by visiting every corner: all choices of rows that meet in one point. A row is an array of
 * factors with the limit last. No column may be under 0. Slow, plain, and owing nothing to the planner.
 */
final class Corners {

    private static final double SINGULAR = 1e-10;
    private static final double FEASIBLE = 1e-8;
    private static final double TIED = 1e-9;

    private final int columns;
    private final List<double[]> equal = new ArrayList<>();
    private final List<double[]> most = new ArrayList<>();
    private double[][] costs = {};
    private double[] best = {};

    Corners(int columns) {
        this.columns = columns;
        for (int c = 0; c < columns; c++) {
            double[] row = new double[columns + 1];
            row[c] = -1;
            most.add(row);
        }
    }

    double[] row(double limit) {
        double[] row = new double[columns + 1];
        row[columns] = limit;
        return row;
    }

    void equal(double[] row) {
        equal.add(row);
    }

    void atMost(double[] row) {
        most.add(row);
    }

    void atLeast(double[] row) {
        most.add(Arrays.stream(row).map(each -> -each).toArray());
    }

    /** How many choices of rows there are to visit. */
    double choices() {
        double choices = 1;
        int free = columns - equal.size();
        for (int i = 0; i < free; i++) {
            choices *= (most.size() - i) / (double) (i + 1);
        }
        return choices;
    }

    /** The least of the first cost, among those of the second, and so on; nothing where no point meets all rows. */
    double[] least(double[]... wanted) {
        costs = wanted;
        best = new double[0];
        choose(new ArrayList<>(equal), 0);
        return best;
    }

    /** How far a point is from meeting the rows, at worst, for each unit of a limit or 1. */
    double worstBreach(double[] x) {
        double worst = 0;
        for (double[] row : most) {
            worst = Math.max(worst, (sum(row, x) - row[columns]) / Math.max(1, Math.abs(row[columns])));
        }
        for (double[] row : equal) {
            worst = Math.max(worst, Math.abs(sum(row, x) - row[columns]) / Math.max(1, Math.abs(row[columns])));
        }
        return worst;
    }

    private void choose(List<double[]> chosen, int from) {
        if (chosen.size() == columns) {
            visit(solve(chosen));
            return;
        }
        for (int i = from; i <= most.size() - (columns - chosen.size()); i++) {
            chosen.add(most.get(i));
            choose(chosen, i + 1);
            chosen.remove(chosen.size() - 1);
        }
    }

    private void visit(double[] x) {
        if (x.length == 0
                || most.stream().anyMatch(row -> sum(row, x) > row[columns] + FEASIBLE)
                || equal.stream().anyMatch(row -> Math.abs(sum(row, x) - row[columns]) > FEASIBLE)) {
            return;
        }
        double[] values = Arrays.stream(costs).mapToDouble(cost -> sum(cost, x)).toArray();
        if (best.length == 0 || before(values, best)) {
            best = values;
        }
    }

    private static boolean before(double[] a, double[] b) {
        for (int i = 0; i < a.length; i++) {
            if (Math.abs(a[i] - b[i]) > TIED) {
                return a[i] < b[i];
            }
        }
        return false;
    }

    private double sum(double[] row, double[] x) {
        double sum = 0;
        for (int c = 0; c < columns; c++) {
            sum += row[c] * x[c];
        }
        return sum;
    }

    /** Gauss with pivots; nothing where the rows don't meet in one point. */
    private double[] solve(List<double[]> rows) {
        double[][] m = rows.stream().map(double[]::clone).toArray(double[][]::new);
        for (int p = 0; p < columns; p++) {
            int pivot = p;
            for (int r = p + 1; r < columns; r++) {
                pivot = Math.abs(m[r][p]) > Math.abs(m[pivot][p]) ? r : pivot;
            }
            double[] swap = m[p];
            m[p] = m[pivot];
            m[pivot] = swap;
            if (Math.abs(m[p][p]) < SINGULAR) {
                return new double[0];
            }
            for (int r = 0; r < columns; r++) {
                double factor = r == p ? 0 : m[r][p] / m[p][p];
                for (int c = p; c <= columns && factor != 0; c++) {
                    m[r][c] -= factor * m[p][c];
                }
            }
        }
        double[] x = new double[columns];
        for (int c = 0; c < columns; c++) {
            x[c] = m[c][columns] / m[c][c];
        }
        return x;
    }
}
