package costrel.harvest;

import costrel.harvest.HarvestPlan.Goal;
import costrel.harvest.LinearProgram.Answer;
import costrel.harvest.LinearProgram.Row;
import costrel.harvest.LinearProgram.State;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Seeks the best weights for a model, goal by goal: what an earlier goal reached is kept while a later one is sought. */
final class PlanSolver {

    /** How much of an earlier goal may be given up for figures as written, for each unit of it (or 1). */
    private static final double KEPT = 1e-12;

    /** The largest change of a share that is asked for counts as kept within this. */
    private static final double CHANGE_KEPT = 1e-9;

    /** Most changes of shares for which better plans and a bound are sought round by round: over it that takes minutes. */
    private static final int FOLLOWED = 400;

    /** Most rounds from a plan to a steadier one. */
    private static final int ROUNDS = 8;

    private static final String SUM_OF_CHANGES = "sum of all changes of shares";

    private final PlanModel model;
    private final Steadiness steadiness;
    private final PlanLimits limits;
    private final List<Goal> goals = new ArrayList<>();
    private boolean proved = true;

    /**
     * What was found.
     *
     * @param kg weights by column, or nothing where there is no plan
     * @param proved whether no plan does better
     * @param goals the goals reached
     * @param steadiest where a bound on changes can't be kept: the steadiest change there is and its proved bound
     */
    record Found(Optional<double[]> kg, boolean proved, List<Goal> goals, Optional<Goal> steadiest) {}

    private PlanSolver(PlanModel model, Steadiness steadiness, PlanLimits limits) {
        this.model = model;
        this.steadiness = steadiness;
        this.limits = limits;
    }

    static Found solve(PlanModel model, Steadiness steadiness, Objective objective, PlanLimits limits) {
        return new PlanSolver(model, steadiness, limits).solve(objective);
    }

    private Found solve(Objective objective) {
        boolean bounded = model.rules().mostChange() < 1 && steadiness.hasLinks();
        if (objective == Objective.STEADIEST || bounded) {
            Optional<Steady> steady = steadiest();
            if (steady.isEmpty()) {
                return nothing(Optional.empty());
            }
            Goal change = steady.get().change();
            if (bounded && change.reached() > model.rules().mostChange() + CHANGE_KEPT) {
                return nothing(Optional.of(change));
            }
            return objective == Objective.STEADIEST ? leastSum(steady.get()) : within(objective, steady.get());
        }
        return found(goals(objective, model.program()));
    }

    private Found nothing(Optional<Goal> steadiest) {
        return new Found(Optional.empty(), false, List.of(), steadiest);
    }

    private Found found(Optional<double[]> x) {
        return new Found(x, proved, List.copyOf(goals), Optional.empty());
    }

    private Optional<double[]> goals(Objective objective, LinearProgram program) {
        return objective == Objective.LEAST_COST ? leastCost(program) : oldestFirst(program);
    }

    private Optional<double[]> leastCost(LinearProgram program) {
        double[] price = new double[model.lots().size()];
        for (int l = 0; l < price.length; l++) {
            price[l] = model.lot(l).pricePerKg().orElse(0); // a lot without a price has been refused, or has no column
        }
        return kept("cost of the hops taken from the store", new PackSearch(model, program, price, limits).search());
    }

    private Optional<double[]> oldestFirst(LinearProgram base) {
        LinearProgram program = base.copy();
        TreeSet<Integer> years = new TreeSet<>();
        model.uses().forEach(use -> years.add(model.lot(use.lot()).cropYear()));
        while (years.size() > 1) {
            int year = years.pollFirst();
            double[] cost = new double[program.columns()];
            Row used = new Row(new int[0], new double[0], 0, Double.POSITIVE_INFINITY);
            for (int i = 0; i < model.uses().size(); i++) {
                if (model.lot(model.uses().get(i).lot()).cropYear() == year) {
                    cost[i] = -1;
                    used = used.plus(i, 1);
                }
            }
            Answer answer = program.minimise(cost, limits);
            if (!answer.hasPoint()) {
                return Optional.empty();
            }
            proved &= answer.state() == State.OPTIMAL;
            goals.add(new Goal("kg used of crop year " + year, -answer.cost(), -answer.bound()));
            double kept = -answer.cost() - KEPT * Math.max(1, -answer.cost());
            program.row(used.atLeast(kept));
        }
        double[] each = new double[model.lots().size()];
        Arrays.fill(each, 1);
        return kept("kg of all hops taken from the store", new PackSearch(model, program, each, limits).search());
    }

    private Optional<double[]> kept(String goal, Answer answer) {
        if (!answer.hasPoint()) {
            return Optional.empty();
        }
        proved &= answer.state() == State.OPTIMAL;
        goals.add(new Goal(goal, answer.cost(), answer.bound()));
        return Optional.of(answer.x());
    }

    /** The steadiest plan: its program, its weights and its largest change. */
    private record Steady(ShareProgram program, Answer answer, Goal change) {}

    private Optional<Steady> steadiest() {
        ShareProgram near = steadiness.near(model.program());
        if (steadiness.exact()) {
            Answer answer = near.leastLargest(limits);
            return answer.hasPoint()
                    ? Optional.of(new Steady(near, answer, change(answer.cost(), answer.bound())))
                    : Optional.empty();
        }
        Answer start = near.leastSum(2, limits);
        if (!start.hasPoint()) {
            return Optional.empty();
        }
        boolean small = near.changes().size() <= FOLLOWED;
        Steady best = steadyAt(small ? followed(start) : start);
        double bound = 0;
        if (small && best.change().reached() > LinearProgram.PROVED) {
            Answer relaxed = steadiness.relaxed(model.program()).leastLargest(limits);
            bound = Math.max(bound, relaxed.bound());
            Steady other = relaxed.hasPoint() ? steadyAt(followed(relaxed)) : best;
            best = other.change().reached() < best.change().reached() ? other : best;
        }
        double reached = best.change().reached();
        return Optional.of(new Steady(best.program(), best.answer(), change(reached, Math.min(bound, reached))));
    }

    /** The steadiest plan with every addition at the total of a plan. */
    private Steady steadyAt(Answer plan) {
        ShareProgram program = steadiness.at(model.program(), plan.x());
        Answer answer = program.leastLargest(limits);
        Answer best = answer.hasPoint() ? answer : plan;
        return new Steady(program, best, change(largest(best), 0));
    }

    /** Follows the first order of the shares from a plan to steadier ones while they are. */
    private Answer followed(Answer start) {
        Answer best = start;
        for (int round = 0; round < ROUNDS; round++) {
            Answer next = steadiness.around(model.program(), best.x()).leastLargest(limits);
            if (!next.hasPoint() || largest(next) >= largest(best) - LinearProgram.PROVED) {
                break;
            }
            best = next;
        }
        return best;
    }

    private double largest(Answer plan) {
        return steadiness.largest(plan.x()).map(HarvestPlan.ShareChange::size).orElse(0.0);
    }

    private static Goal change(double reached, double bound) {
        return new Goal("largest change of a lot's share of an addition", reached, Math.max(0, bound));
    }

    private Found leastSum(Steady steady) {
        goals.add(steady.change());
        if (steady.change().reached() <= LinearProgram.PROVED) {
            goals.add(new Goal(
                    SUM_OF_CHANGES, steady.program().sum(steady.answer().x()), 0));
            proved = true;
            return found(Optional.of(steady.answer().x()));
        }
        Answer answer = steady.program().leastSum(steady.change().reached() + CHANGE_KEPT / 10, limits);
        if (!answer.hasPoint()) {
            proved = false;
            return found(Optional.of(steady.answer().x()));
        }
        double bound = steadiness.exact() ? answer.bound() : steady.change().bound();
        goals.add(new Goal(SUM_OF_CHANGES, answer.cost(), Math.max(0, bound)));
        proved = goals.stream().allMatch(goal -> goal.gap() <= LinearProgram.PROVED * Math.max(1, goal.reached()));
        return found(Optional.of(answer.x()));
    }

    /** Another objective with no change over the bound of the house. */
    private Found within(Objective objective, Steady steady) {
        double most = model.rules().mostChange();
        Optional<double[]> x = goals(objective, steady.program().within(most));
        if (x.isEmpty()) {
            proved = false;
            return found(Optional.of(steady.answer().x()));
        }
        if (!steadiness.exact()) {
            List<Goal> reached = List.copyOf(goals);
            goals.clear();
            boolean all = proved;
            goals(objective, steadiness.relaxed(model.program()).within(most));
            List<Goal> bounds = List.copyOf(goals);
            goals.clear();
            proved = all;
            for (int i = 0; i < reached.size(); i++) {
                Goal goal = reached.get(i);
                double bound = i < bounds.size() ? bounds.get(i).bound() : Double.NEGATIVE_INFINITY;
                Goal both = new Goal(goal.what(), goal.reached(), bound);
                proved &= both.gap() <= LinearProgram.PROVED * Math.max(1, Math.abs(goal.reached()));
                goals.add(both);
            }
        }
        return found(x);
    }
}
