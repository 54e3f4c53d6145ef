package costrel.harvest;

import costrel.harvest.LinearProgram.Answer;
import costrel.harvest.LinearProgram.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A program, and every change of a lot's share from a gyle to the next as a sum over its columns.
 *
 * @param program the program
 * @param changes the changes
 */
record ShareProgram(LinearProgram program, List<Sum> changes) {

    /** A factor times a column. */
    record Term(int column, double factor) {}

    /** Terms and a constant. */
    record Sum(List<Term> terms, double constant) {

        static final Sum NOTHING = new Sum(List.of(), 0);

        /** The difference, with one term for a column. */
        Sum less(Sum other) {
            Map<Integer, Double> factors = new TreeMap<>();
            terms.forEach(term -> factors.merge(term.column(), term.factor(), Double::sum));
            other.terms.forEach(term -> factors.merge(term.column(), -term.factor(), Double::sum));
            List<Term> both = new ArrayList<>();
            factors.forEach((column, factor) -> both.add(new Term(column, factor)));
            return new Sum(both, constant - other.constant);
        }

        /** The same with a column that isn't in it yet. */
        Sum plus(int column, double factor) {
            List<Term> more = new ArrayList<>(terms);
            more.add(new Term(column, factor));
            return new Sum(more, constant);
        }

        /** The row that holds the sum, constant and all, between two limits. */
        Row between(double least, double most) {
            return new Row(
                    terms.stream().mapToInt(Term::column).toArray(),
                    terms.stream().mapToDouble(Term::factor).toArray(),
                    least - constant,
                    most - constant);
        }

        double of(double[] x) {
            return constant + between(0, 0).of(x);
        }
    }

    /** Makes the largest change least; that change is the cost. */
    Answer leastLargest(PlanLimits limits) {
        LinearProgram larger = program.copy();
        int largest = larger.column(2); // shares that are only near the truth may come to more than 1
        for (Sum change : changes) {
            larger.row(change.plus(largest, -1).between(Double.NEGATIVE_INFINITY, 0));
            larger.row(change.plus(largest, 1).between(0, Double.POSITIVE_INFINITY));
        }
        double[] cost = new double[larger.columns()];
        cost[largest] = 1;
        return larger.minimise(cost, limits);
    }

    /** Makes the sum of all changes least with none over a bound; that sum is the cost. */
    Answer leastSum(double bound, PlanLimits limits) {
        LinearProgram larger = program.copy();
        for (Sum change : changes) {
            int rise = larger.column(bound);
            int fall = larger.column(bound);
            larger.row(change.plus(rise, -1).plus(fall, 1).between(0, 0));
        }
        double[] cost = new double[larger.columns()];
        Arrays.fill(cost, program.columns(), cost.length, 1);
        return larger.minimise(cost, limits);
    }

    /** The sum of all changes at a point. */
    double sum(double[] x) {
        return changes.stream().mapToDouble(change -> Math.abs(change.of(x))).sum();
    }

    /** The same program with no change over a bound. */
    LinearProgram within(double bound) {
        LinearProgram bounded = program.copy();
        changes.forEach(change -> bounded.row(change.between(-bound, bound)));
        return bounded;
    }
}
