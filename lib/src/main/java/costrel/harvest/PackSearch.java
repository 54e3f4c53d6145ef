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
 * plan that can be carried out. Better plans are also sought straight down from a branch, and by leaving out single packs.
 */
final class PackSearch {

    /** A number of packs is whole within this. */
    private static final double WHOLE = 1e-9;

    /**
     * Cost of hops that no open pack holds, over that of the dearest: a branch stays solvable, which keeps it quick. Where only
     * such hops are left to blame, it is looked at again without them.
     */
    private static final double PENALTY = 20;

    /** How often a plan is sought straight down: once in so many branches. */
    private static final int DOWN = 75;

    private final PlanModel model;
    private final LinearProgram program;
    private final double[] costPerKg;
    private final double[] cost;
    private final List<Column> columns = new ArrayList<>();
    private final PlanLimits limits;
    private final List<Integer> lacking = new ArrayList<>();
    private @Nullable SimplexSearch warm;
    private Answer best = Answer.unsettled(Double.NEGATIVE_INFINITY);

    /** A number of packs of a weight as a column. */
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

        /** The same with columns at 0. */
        Branch without(List<Integer> zero) {
            double[] newHigh = high.clone();
            zero.forEach(column -> newHigh[column] = 0);
            return new Branch(bound, low, newHigh);
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
                lacking.add(addPacks(l));
            }
        }
        cost = new double[this.program.columns()];
        for (int i = 0; i < model.uses().size(); i++) {
            int lot = model.uses().get(i).lot();
            cost[i] = model.lot(lot).wholePackKg().isPresent() ? 0 : costPerKg[lot];
        }
        columns.forEach(each -> cost[each.column()] = each.kg() * costPerKg[each.lot()]);
        double dearest = Arrays.stream(costPerKg).max().orElse(0);
        lacking.forEach(column -> cost[column] = PENALTY * (dearest > 0 ? dearest : 1));
    }

    /** Columns for the packs of a lot; the last, which is returned, is what the packs lack. */
    private int addPacks(int lot) {
        Packs packs = Packs.of(model.lot(lot));
        Row row = new Row(new int[0], new double[0], Double.NEGATIVE_INFINITY, 0);
        for (int used : model.columnsOfLot(lot)) {
            row = row.plus(used, 1);
        }
        Column whole = new Column(program.column(packs.whole()), lot, packs.packKg());
        Column odd = new Column(program.column(packs.oddKg() > 0 ? 1 : 0), lot, packs.oddKg());
        int lacks = program.column(model.lot(lot).stockKg());
        columns.add(whole);
        columns.add(odd);
        program.row(row.plus(whole.column(), -whole.kg())
                .plus(odd.column(), -odd.kg())
                .plus(lacks, -1));
        return lacks;
    }

    /** The answer; its cost is that of packs opened whole. */
    Answer search() {
        Answer root = program.minimise(cost, limits);
        if (!root.hasPoint() || columns.isEmpty()) {
            return root;
        }
        take(rounded(root));
        PriorityQueue<Branch> open = new PriorityQueue<>(Comparator.comparingDouble(Branch::bound));
        open.add(new Branch(root.bound(), program.lower(), program.upper()));
        double settled = Double.POSITIVE_INFINITY;
        double thinned = Double.POSITIVE_INFINITY;
        for (int looked = 0; !open.isEmpty() && looked < limits.mostBranches(); looked++) {
            Branch branch = open.remove();
            if (!betters(branch.bound())) {
                settled = Math.min(settled, branch.bound());
                break;
            }
            Answer answer = looked == 0 ? root : within(branch);
            if (answer.hasPoint() && mostBroken(answer.x()) == null && lacks(answer.x())) {
                branch = branch.without(lacking);
                answer = within(branch);
            }
            if (answer.state() == State.INFEASIBLE) {
                continue;
            }
            double bound = Math.max(answer.bound(), branch.bound());
            if (answer.hasPoint()) {
                take(rounded(answer));
                if (looked % DOWN == 0) {
                    straightDown(branch, answer);
                    if (best.cost() < thinned) {
                        withoutSinglePacks();
                        thinned = best.cost();
                    }
                }
            }
            Column broken = answer.hasPoint() ? mostBroken(answer.x()) : null;
            if (broken == null || !betters(bound)) {
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
        return Answer.of(best.x(), best.cost(), Math.min(best.cost(), settled));
    }

    private boolean betters(double bound) {
        return best.cost() - bound > LinearProgram.PROVED / 10 * Math.max(1, Math.abs(best.cost()));
    }

    private boolean take(Answer plan) {
        if (plan.cost() < best.cost()) {
            best = plan;
            return true;
        }
        return false;
    }

    /** The answer within a branch: from the last answer where that is proved, afresh where not. */
    private Answer within(Branch branch) {
        if (warm == null) {
            warm = new SimplexSearch(program, cost, branch.low, branch.high, limits, true);
        } else {
            warm.within(branch.low, branch.high);
        }
        Answer answer = warm.answer();
        if (answer.state() == State.OPTIMAL) {
            return answer;
        }
        warm = null;
        return program.minimise(cost, branch.low, branch.high, limits);
    }

    /** Makes the number of packs that is nearest to whole whole, again and again, down to a plan. */
    private void straightDown(Branch from, Answer start) {
        Branch branch = from;
        Answer answer = start;
        for (Column broken = leastBroken(answer.x()); broken != null; broken = leastBroken(answer.x())) {
            double packs = answer.x()[broken.column()];
            double floor = Math.floor(packs);
            Branch down = branch.within(0, broken.column(), 0, floor);
            Branch up = branch.within(0, broken.column(), floor + 1, Double.POSITIVE_INFINITY);
            branch = packs - floor < 0.5 ? down : up;
            answer = within(branch);
            if (!answer.hasPoint() || !betters(answer.cost())) {
                branch = branch == down ? up : down;
                answer = within(branch);
            }
            if (!answer.hasPoint() || !betters(answer.cost())) {
                return;
            }
            take(rounded(answer));
        }
    }

    /** Leaves a pack out of the best plan wherever the others hold enough, the dearest first. */
    private void withoutSinglePacks() {
        List<Column> dearest = new ArrayList<>(columns);
        dearest.sort(Comparator.comparingDouble((Column each) -> -cost[each.column()]));
        boolean better = true;
        while (better) {
            better = false;
            for (Column each : dearest) {
                double opened = best.x()[each.column()];
                if (opened > 0) {
                    double[] high = program.upper();
                    columns.forEach(column -> high[column.column()] = best.x()[column.column()]);
                    high[each.column()] = opened - 1;
                    Answer answer = within(new Branch(0, program.lower(), high));
                    better |= answer.hasPoint() && take(rounded(answer));
                }
            }
        }
    }

    /** The weights of an answer with packs rounded up to what has to be opened for them. */
    private Answer rounded(Answer answer) {
        double[] x = answer.x().clone();
        for (int i = 0; i < columns.size(); i += 2) {
            int lot = columns.get(i).lot();
            Packs packs = Packs.of(model.lot(lot));
            double used = 0;
            for (int column : model.columnsOfLot(lot)) {
                used += x[column];
            }
            Packs.Opened opened = packs.fewestFor(used);
            x[columns.get(i).column()] = opened.whole();
            x[columns.get(i + 1).column()] = opened.odd() ? 1 : 0;
            x[columns.get(i + 1).column() + 1] = 0;
        }
        return new Answer(State.FEASIBLE, x, LinearProgram.value(cost, x), answer.bound());
    }

    private boolean lacks(double[] x) {
        return lacking.stream().anyMatch(column -> x[column] > WHOLE);
    }

    private @Nullable Column mostBroken(double[] x) {
        Column most = null;
        double weight = 0;
        for (Column each : columns) {
            double broken = broken(x, each);
            if (broken > WHOLE && broken * each.kg() * (1 + costPerKg[each.lot()]) > weight) {
                most = each;
                weight = broken * each.kg() * (1 + costPerKg[each.lot()]);
            }
        }
        return most;
    }

    private @Nullable Column leastBroken(double[] x) {
        Column least = null;
        for (Column each : columns) {
            double broken = broken(x, each);
            if (broken > WHOLE && (least == null || broken < broken(x, least))) {
                least = each;
            }
        }
        return least;
    }

    private static double broken(double[] x, Column column) {
        double part = x[column.column()] - Math.floor(x[column.column()]);
        return Math.min(part, 1 - part);
    }
}
