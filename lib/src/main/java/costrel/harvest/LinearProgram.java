package costrel.harvest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;

/** A linear program: columns within bounds, rows within limits, a cost to be made least. */
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

        /** The largest factor, by which a row is brought to a like size with others; 0 for a row about nothing. */
        double scale() {
            double largest = 0;
            for (double factor : factors) {
                largest = Math.max(largest, Math.abs(factor));
            }
            return largest;
        }

        boolean holds(double[] x) {
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

        /** A point that is optimal where the bound comes near enough to its cost. */
        static Answer of(double[] x, double cost, double bound) {
            boolean proved = cost - bound <= PROVED * Math.max(1, Math.abs(cost));
            return new Answer(proved ? State.OPTIMAL : State.FEASIBLE, x, cost, Math.min(bound, cost));
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
    private double[] upper;
    private int columns;

    LinearProgram() {
        this(new ArrayList<>(), new double[64], 0);
    }

    private LinearProgram(List<Row> rows, double[] upper, int columns) {
        this.rows = rows;
        this.upper = upper;
        this.columns = columns;
    }

    LinearProgram copy() {
        return new LinearProgram(new ArrayList<>(rows), upper.clone(), columns);
    }

    /** A new column between 0 and a finite bound. */
    int column(double most) {
        if (!(most >= 0 && most <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("column of the planner: expected a finite bound, found " + most);
        }
        if (columns == upper.length) {
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
        return new double[columns];
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

    List<Row> rows() {
        return rows;
    }

    Answer minimise(double[] cost, PlanLimits limits) {
        return minimise(cost, lower(), upper(), limits);
    }

    /** The same with other bounds on the columns. Two methods are tried where the first answer doesn't stand the proof. */
    Answer minimise(double[] cost, double[] low, double[] high, PlanLimits limits) {
        Answer best = Answer.unsettled(Double.NEGATIVE_INFINITY);
        for (boolean sparse : new boolean[] {true, false}) {
            Answer answer = new SimplexSearch(this, cost, low, high, limits, sparse).answer();
            if (answer.state() == State.OPTIMAL || (answer.state() == State.INFEASIBLE && !best.hasPoint())) {
                return answer;
            }
            double bound = Math.max(best.bound(), answer.bound());
            Answer better = answer.cost() < best.cost() ? answer : best;
            best = new Answer(better.state(), better.x(), better.cost(), bound);
        }
        return best;
    }

    static double value(double[] cost, double[] x) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += cost[i] * x[i];
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
