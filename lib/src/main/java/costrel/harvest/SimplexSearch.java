package costrel.harvest;

import costrel.harvest.LinearProgram.Answer;
import costrel.harvest.LinearProgram.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;
import org.ojalgo.structure.Mutate1D;

/**
 * A linear program in the hands of the library that solves it. The library isn't believed: its answer is put back into every
 * row, and how good it is is proved anew from its multipliers. Bounds can be changed and the question put again, which starts
 * from the last answer and is quick; an answer that isn't proved then has to be sought afresh.
 */
final class SimplexSearch {

    private final LinearProgram program;
    private final double[] cost;
    private final double costScale;
    private final double[] low;
    private final double[] high;
    private final List<Side> sides = new ArrayList<>();
    private final LinearSolver solver;
    private boolean impossible;

    /** One side of a row as the library takes it: the row times a factor is equal to, or at most, a limit. */
    private record Side(Row row, double factor, double limit, boolean equal) {}

    SimplexSearch(
            LinearProgram program, double[] cost, double[] low, double[] high, PlanLimits limits, boolean sparse) {
        this.program = program;
        this.cost = Arrays.copyOf(cost, program.columns());
        this.low = low.clone();
        this.high = high.clone();
        costScale = Math.max(Arrays.stream(cost).map(Math::abs).max().orElse(0), Double.MIN_NORMAL);
        LinearSolver.Builder builder = LinearSolver.newBuilder(
                Arrays.stream(this.cost).map(each -> each / costScale).toArray());
        for (int i = 0; i < low.length; i++) {
            builder.range(i, low[i], high[i]);
        }
        addSides();
        for (Side side : sides) {
            Mutate1D body = side.equal() ? builder.equality(side.limit()) : builder.inequality(side.limit());
            for (int i = 0; i < side.row().size(); i++) {
                body.set((long) side.row().column(i), side.factor() * side.row().factor(i));
            }
        }
        Optimisation.Options options = new Optimisation.Options();
        options.sparse = sparse;
        options.iterations_abort = limits.mostSteps();
        solver = builder.build(options);
    }

    /** Inequalities first, as the library numbers its multipliers. */
    private void addSides() {
        List<Side> equalities = new ArrayList<>();
        for (Row row : program.rows()) {
            double scale = 1 / row.scale();
            if (Double.isInfinite(scale)) {
                impossible |= !row.holds(new double[program.columns()]);
            } else if (row.least() == row.most()) {
                equalities.add(new Side(row, scale, row.most() * scale, true));
            } else {
                if (row.most() < Double.POSITIVE_INFINITY) {
                    sides.add(new Side(row, scale, row.most() * scale, false));
                }
                if (row.least() > Double.NEGATIVE_INFINITY) {
                    sides.add(new Side(row, -scale, -row.least() * scale, false));
                }
            }
        }
        sides.addAll(equalities);
    }

    /** Puts other bounds on the columns for the next answer. */
    void within(double[] newLow, double[] newHigh) {
        for (int i = 0; i < low.length; i++) {
            if (low[i] != newLow[i] || high[i] != newHigh[i]) {
                low[i] = newLow[i];
                high[i] = newHigh[i];
                solver.updateRange(i, low[i], high[i]);
            }
        }
    }

    Answer answer() {
        LinearProgram.stopWhenAsked();
        if (impossible) {
            return Answer.infeasible();
        }
        Optimisation.Result result = solver.solve();
        LinearProgram.stopWhenAsked();
        if (result.getState() == Optimisation.State.INFEASIBLE) {
            return Answer.infeasible();
        }
        double bound = result.getDualSolution()
                .map(multipliers -> bound(multipliers.get()))
                .orElse(Double.NEGATIVE_INFINITY);
        double[] x = new double[program.columns()];
        for (int i = 0; i < x.length; i++) {
            x[i] = Math.min(Math.max(result.doubleValue(i), low[i]), high[i]);
            if (!(Math.abs(x[i] - result.doubleValue(i)) <= LinearProgram.CLOSE * Math.max(1, Math.abs(x[i])))) {
                return Answer.unsettled(bound);
            }
        }
        if (!program.rows().stream().allMatch(row -> row.holds(x))) {
            return Answer.unsettled(bound);
        }
        return Answer.of(x, LinearProgram.value(cost, x), bound);
    }

    /**
     * What no point can better. For any multipliers, with those of inequalities not under 0, the least of cost + Σ multiplier ·
     * (row − limit) over the bounds of the columns alone is under the cost of every point that meets the rows (weak duality).
     */
    private double bound(Access1D<?> multipliers) {
        double[] reduced = cost.clone();
        double sum = 0;
        for (int i = 0; i < sides.size(); i++) {
            Side side = sides.get(i);
            double multiplier = multipliers.doubleValue(i) * costScale;
            if (!side.equal()) {
                multiplier = Math.max(0, multiplier);
            }
            sum -= multiplier * side.limit();
            for (int k = 0; k < side.row().size(); k++) {
                reduced[side.row().column(k)] +=
                        multiplier * side.factor() * side.row().factor(k);
            }
        }
        for (int i = 0; i < reduced.length; i++) {
            sum += reduced[i] * (reduced[i] >= 0 ? low[i] : high[i]);
        }
        return sum;
    }
}
