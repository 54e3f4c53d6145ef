package costrel.harvest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Access1D;
import org.ojalgo.structure.Mutate1D;

/**
 * A linear program: columns within bounds, rows within limits, a cost to be made least. The library that solves it isn't
 * believed: its answer is put back into every row, and how good it is is proved anew from its multipliers.
 */
final class LinearProgram {

    /** How far a row or a bound may be off, for each unit of its limit (or 1): what the answers promise. */
    static final double CLOSE = 1e-9;

    /** A cost counts as least when the proof leaves no more than this, for each unit of the cost (or 1). */
    static final double PROVED = 1e-7;

    /** A row: the sum of factors times columns lies between least and most; one of the two may be infinite. */
    static final class Row {
        private final int[] columns;
        private final double[] factors;
        private final double least;
        private final double most;

        Row(int[] columns, double[] factors, double least, double most) {
            this.columns = columns;
            this.factors = factors;
            this.least = least;
            this.most = most;
        }

        int size() {
            return columns.length;
        }

        int column(int i) {
            return columns[i];
        }

        double factor(int i) {
            return factors[i];
        }

        double least() {
            return least;
        }

        double most() {
            return most;
        }

        /** The same row with a term more. */
        Row plus(int column, double factor) {
            int[] longer = Arrays.copyOf(columns, size() + 1);
            double[] with = Arrays.copyOf(factors, size() + 1);
            longer[size()] = column;
            with[size()] = factor;
            return new Row(longer, with, least, most);
        }

        /** The same sum with a least, and without a most. */
        Row atLeast(double limit) {
            return new Row(columns, factors, limit, Double.POSITIVE_INFINITY);
        }

        double of(double[] x) {
            double sum = 0;
            for (int i = 0; i < columns.length; i++) {
                sum += factors[i] * x[columns[i]];
            }
            return sum;
        }

        private double scale() {
            double largest = 0;
            for (double factor : factors) {
                largest = Math.max(largest, Math.abs(factor));
            }
            return largest;
        }

        private boolean holds(double[] x) {
            double sum = of(x);
            return sum >= least - CLOSE * Math.max(1, Math.abs(least))
                    && sum <= most + CLOSE * Math.max(1, Math.abs(most));
        }
    }

    /** What came of a search. */
    enum State {
        OPTIMAL,
        FEASIBLE,
        INFEASIBLE,
        /** Neither a point nor a proof that there is none: the limit of steps was met. */
        UNSETTLED
    }

    /** The answer: a point, its cost, and what no point can better. */
    static final class Answer {
        private final State state;
        private final double[] x;
        private final double cost;
        private final double bound;

        Answer(State state, double[] x, double cost, double bound) {
            this.state = state;
            this.x = x;
            this.cost = cost;
            this.bound = bound;
        }

        static Answer infeasible() {
            return new Answer(State.INFEASIBLE, new double[0], Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        }

        static Answer unsettled(double bound) {
            return new Answer(State.UNSETTLED, new double[0], Double.POSITIVE_INFINITY, bound);
        }

        State state() {
            return state;
        }

        double[] x() {
            return x;
        }

        double cost() {
            return cost;
        }

        double bound() {
            return bound;
        }

        boolean hasPoint() {
            return state == State.OPTIMAL || state == State.FEASIBLE;
        }
    }

    private final List<Row> rows;
    private double[] lower;
    private double[] upper;
    private int columns;

    LinearProgram() {
        this(new ArrayList<>(), new double[64], new double[64], 0);
    }

    private LinearProgram(List<Row> rows, double[] lower, double[] upper, int columns) {
        this.rows = rows;
        this.lower = lower;
        this.upper = upper;
        this.columns = columns;
    }

    LinearProgram copy() {
        return new LinearProgram(new ArrayList<>(rows), lower.clone(), upper.clone(), columns);
    }

    /** A new column between 0 and a finite bound. */
    int column(double most) {
        if (!(most >= 0 && most <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("column of the planner: expected a finite bound, found " + most);
        }
        if (columns == lower.length) {
            lower = Arrays.copyOf(lower, 2 * columns);
            upper = Arrays.copyOf(upper, 2 * columns);
        }
        upper[columns] = most;
        return columns++;
    }

    /** Lowers the upper bound of a column. */
    void narrow(int column, double most) {
        upper[column] = Math.min(upper[column], most);
    }

    int columns() {
        return columns;
    }

    double[] lower() {
        return Arrays.copyOf(lower, columns);
    }

    double[] upper() {
        return Arrays.copyOf(upper, columns);
    }

    int row(Row row) {
        rows.add(row);
        return rows.size() - 1;
    }

    void replace(int index, Row row) {
        rows.set(index, row);
    }

    Row row(int index) {
        return rows.get(index);
    }

    int rows() {
        return rows.size();
    }

    Answer minimise(double[] cost, PlanLimits limits) {
        return minimise(cost, lower(), upper(), limits);
    }

    /** The same with other bounds on the columns. Two methods are tried where the first answer doesn't stand the proof. */
    Answer minimise(double[] cost, double[] low, double[] high, PlanLimits limits) {
        Answer best = Answer.unsettled(Double.NEGATIVE_INFINITY);
        for (Method method : Method.values()) {
            stopWhenAsked();
            Answer answer = once(cost, low, high, limits, method);
            if (answer.state() == State.OPTIMAL || (answer.state() == State.INFEASIBLE && !best.hasPoint())) {
                return answer;
            }
            double bound = Math.max(best.bound(), answer.bound());
            Answer better = answer.cost() < best.cost() ? answer : best;
            best = new Answer(better.state(), better.x(), better.cost(), bound);
        }
        return best;
    }

    private enum Method {
        SPARSE,
        DENSE
    }

    private Answer once(double[] cost, double[] low, double[] high, PlanLimits limits, Method method) {
        double costScale = Math.max(Arrays.stream(cost).map(Math::abs).max().orElse(0), Double.MIN_NORMAL);
        LinearSolver.Builder builder = LinearSolver.newBuilder(
                Arrays.stream(cost).limit(columns).map(each -> each / costScale).toArray());
        for (int i = 0; i < columns; i++) {
            builder.range(i, low[i], high[i]);
        }
        List<Side> sides = sides();
        for (Side side : sides) {
            if (side.row().scale() == 0) {
                if (!side.row().holds(new double[columns])) {
                    return Answer.infeasible();
                }
                continue;
            }
            Mutate1D body = side.equal() ? builder.equality(side.limit()) : builder.inequality(side.limit());
            for (int i = 0; i < side.row().size(); i++) {
                body.set((long) side.row().column(i), side.factor() * side.row().factor(i));
            }
        }
        Optimisation.Options options = new Optimisation.Options();
        options.sparse = method == Method.SPARSE;
        options.iterations_abort = limits.mostSteps();
        Optimisation.Result result = builder.build(options).solve();
        stopWhenAsked();
        if (result.getState() == Optimisation.State.INFEASIBLE) {
            return Answer.infeasible();
        }
        double bound = result.getDualSolution()
                .map(multipliers -> bound(cost, costScale, low, high, sides, multipliers.get()))
                .orElse(Double.NEGATIVE_INFINITY);
        double[] x = new double[columns];
        for (int i = 0; i < columns; i++) {
            x[i] = Math.min(Math.max(result.doubleValue(i), low[i]), high[i]);
            if (Math.abs(x[i] - result.doubleValue(i)) > CLOSE * Math.max(1, Math.abs(x[i]))) {
                return Answer.unsettled(bound);
            }
        }
        if (!rows.stream().allMatch(row -> row.holds(x))) {
            return Answer.unsettled(bound);
        }
        double value = value(cost, x);
        boolean proved = value - bound <= PROVED * Math.max(1, Math.abs(value));
        return new Answer(proved ? State.OPTIMAL : State.FEASIBLE, x, value, Math.min(bound, value));
    }

    static double value(double[] cost, double[] x) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += cost[i] * x[i];
        }
        return sum;
    }

    /** One side of a row as the library takes it: the row times a factor is equal to, or at most, a limit. */
    private record Side(Row row, double factor, double limit, boolean equal) {}

    private List<Side> sides() {
        List<Side> inequalities = new ArrayList<>();
        List<Side> equalities = new ArrayList<>();
        for (Row row : rows) {
            double scale = row.scale() > 0 ? 1 / row.scale() : 1;
            if (row.least() == row.most()) {
                equalities.add(new Side(row, scale, row.most() * scale, true));
                continue;
            }
            if (row.most() < Double.POSITIVE_INFINITY) {
                inequalities.add(new Side(row, scale, row.most() * scale, false));
            }
            if (row.least() > Double.NEGATIVE_INFINITY) {
                inequalities.add(new Side(row, -scale, -row.least() * scale, false));
            }
        }
        inequalities.addAll(equalities);
        return inequalities;
    }

    /**
     * What no point can better. For any multipliers, with those of inequalities not under 0, the least of cost + Σ multiplier ·
     * (row − limit) over the bounds of the columns alone is under the cost of every point that meets the rows (weak duality).
     */
    private double bound(
            double[] cost, double costScale, double[] low, double[] high, List<Side> sides, Access1D<?> multipliers) {
        double[] reduced = Arrays.copyOf(cost, columns);
        double sum = 0;
        int next = 0;
        for (Side side : sides) {
            if (side.row().scale() == 0) {
                continue;
            }
            double multiplier = multipliers.doubleValue(next++) * costScale;
            if (!side.equal()) {
                multiplier = Math.max(0, multiplier);
            }
            sum -= multiplier * side.limit();
            for (int i = 0; i < side.row().size(); i++) {
                reduced[side.row().column(i)] +=
                        multiplier * side.factor() * side.row().factor(i);
            }
        }
        for (int i = 0; i < columns; i++) {
            sum += reduced[i] * (reduced[i] >= 0 ? low[i] : high[i]);
        }
        return sum;
    }

    /** Lets a person stop a long search: the thread is asked between programs, and the library asks it at every step. */
    static void stopWhenAsked() {
        if (Thread.interrupted()) {
            throw new CancellationException("the plan was stopped before it was found");
        }
    }
}
