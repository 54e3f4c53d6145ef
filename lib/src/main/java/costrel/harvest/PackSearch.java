package costrel.harvest;

import costrel.harvest.LinearProgram.Answer;
import costrel.harvest.LinearProgram.Row;
import costrel.harvest.LinearProgram.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Least cost of what is taken from the store where some lots go by whole packs: branch and bound over the numbers of packs, the
 * most promising branch first. In a branch packs may be broken, which bounds it; the same weights with packs rounded up are a
 * plan that can be carried out.
 */
final class PackSearch {

    private static final double WHOLE = 1e-9;

    private final PlanModel model;
    private final LinearProgram program;
    private final double[] costPerKg;
    private final double[] cost;
    private final List<Column> columns = new ArrayList<>();
    private final PlanLimits limits;

    /** A number of packs as a column. */
    private record Column(int column, int lot, double kg) {}

    /** Bounds on the numbers of packs, and what no plan within them can better. */
    private static final class Branch {
        private final double bound;
        private final double[] low;
        private final double[] high;

        Branch(double bound, double[] low, double[] high) {
            this.bound = bound;
            this.low = low;
            this.high = high;
        }

        double bound() {
            return bound;
        }

        Branch within(double newBound, int column, double least, double most) {
            double[] newLow = low.clone();
            double[] newHigh = high.clone();
            newLow[column] = Math.max(low[column], least);
            newHigh[column] = Math.min(high[column], most);
            return new Branch(newBound, newLow, newHigh);
        }
    }

    /**
     * Prepares a search.
     *
     * @param model the requirements
     * @param program their program, or one that asks for more
     * @param costPerKg cost of a kilogram of each lot taken from the store
     */
    PackSearch(PlanModel model, LinearProgram program, double[] costPerKg, PlanLimits limits) {
        this.model = model;
        this.program = program.copy();
        this.costPerKg = costPerKg.clone();
        this.limits = limits;
        for (int l = 0; l < model.lots().size(); l++) {
            if (model.lot(l).wholePackKg().isPresent() && !model.columnsOfLot(l).isEmpty()) {
                addPacks(l);
            }
        }
        cost = new double[this.program.columns()];
        for (int i = 0; i < model.uses().size(); i++) {
            int lot = model.uses().get(i).lot();
            cost[i] = model.lot(lot).wholePackKg().isPresent() ? 0 : costPerKg[lot];
        }
        columns.forEach(each -> cost[each.column()] = each.kg() * costPerKg[each.lot()]);
    }

    private void addPacks(int lot) {
        Packs packs = Packs.of(model.lot(lot));
        List<Integer> used = model.columnsOfLot(lot);
        int size = used.size();
        int[] row = Arrays.copyOf(used.stream().mapToInt(Integer::intValue).toArray(), size + 2);
        double[] factors = new double[size + 2];
        Arrays.fill(factors, 0, size, 1);
        row[size] = program.column(packs.whole());
        factors[size] = -packs.packKg();
        columns.add(new Column(row[size], lot, packs.packKg()));
        row[size + 1] = program.column(packs.oddKg() > 0 ? 1 : 0);
        factors[size + 1] = -packs.oddKg();
        columns.add(new Column(row[size + 1], lot, packs.oddKg()));
        program.row(new Row(row, factors, Double.NEGATIVE_INFINITY, 0));
    }

    /** The answer; its cost is that of packs opened whole. */
    Answer search() {
        Answer root = program.minimise(cost, limits);
        if (!root.hasPoint() || columns.isEmpty()) {
            return root;
        }
        Answer best = refined(rounded(root));
        PriorityQueue<Branch> open = new PriorityQueue<>(Comparator.comparingDouble(Branch::bound));
        open.add(new Branch(root.bound(), program.lower(), program.upper()));
        double settled = Double.POSITIVE_INFINITY;
        for (int looked = 0; !open.isEmpty() && looked < limits.mostBranches(); looked++) {
            Branch branch = open.remove();
            if (!betters(branch.bound(), best.cost())) {
                settled = Math.min(settled, branch.bound());
                break;
            }
            Answer answer = looked == 0 ? root : program.minimise(cost, branch.low, branch.high, limits);
            if (answer.state() == State.INFEASIBLE) {
                continue;
            }
            if (!answer.hasPoint()) {
                settled = Math.min(settled, branch.bound());
                continue;
            }
            Answer plan = rounded(answer);
            best = plan.cost() < best.cost() ? plan : best;
            double bound = Math.max(answer.bound(), branch.bound());
            Column broken = mostBroken(answer.x());
            if (broken == null || !betters(bound, best.cost())) {
                settled = Math.min(settled, bound);
                continue;
            }
            double packs = Math.floor(answer.x()[broken.column()]);
            open.add(branch.within(bound, broken.column(), 0, packs));
            open.add(branch.within(bound, broken.column(), packs + 1, Double.POSITIVE_INFINITY));
        }
        for (Branch branch : open) {
            settled = Math.min(settled, branch.bound());
        }
        double bound = Math.min(best.cost(), settled);
        boolean proved = best.cost() - bound <= LinearProgram.PROVED * Math.max(1, Math.abs(best.cost()));
        return new Answer(proved ? State.OPTIMAL : State.FEASIBLE, best.x(), best.cost(), bound);
    }

    private static boolean betters(double bound, double cost) {
        return cost - bound > LinearProgram.PROVED / 10 * Math.max(1, Math.abs(cost));
    }

    /** The weights of an answer with packs rounded up to what has to be opened for them. */
    private Answer rounded(Answer answer) {
        double[] x = answer.x().clone();
        for (int i = 0; i < columns.size(); i += 2) {
            Packs packs = Packs.of(model.lot(columns.get(i).lot()));
            double used = 0;
            for (int column : model.columnsOfLot(columns.get(i).lot())) {
                used += x[column];
            }
            Packs.Opened opened = packs.fewestFor(used);
            x[columns.get(i).column()] = opened.whole();
            x[columns.get(i + 1).column()] = opened.odd() ? 1 : 0;
        }
        return new Answer(State.FEASIBLE, x, LinearProgram.value(cost, x), answer.bound());
    }

    /** The best weights for the packs that are open anyway. */
    private Answer refined(Answer plan) {
        double[] low = program.lower();
        double[] high = program.upper();
        for (Column each : columns) {
            low[each.column()] = plan.x()[each.column()];
            high[each.column()] = plan.x()[each.column()];
        }
        Answer answer = program.minimise(cost, low, high, limits);
        return answer.hasPoint() && answer.cost() < plan.cost() ? rounded(answer) : plan;
    }

    private @Nullable Column mostBroken(double[] x) {
        Column most = null;
        double weight = 0;
        for (Column each : columns) {
            double part = x[each.column()] - Math.floor(x[each.column()]);
            double broken = Math.min(part, 1 - part);
            if (broken > WHOLE && broken * each.kg() * (1 + costPerKg[each.lot()]) > weight) {
                most = each;
                weight = broken * each.kg() * (1 + costPerKg[each.lot()]);
            }
        }
        return most;
    }
}
