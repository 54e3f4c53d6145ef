package costrel.harvest;

import costrel.harvest.HarvestPlan.Goal;
import costrel.harvest.HarvestPlan.GyleTotal;
import costrel.harvest.HarvestPlan.ShareChange;
import costrel.harvest.HarvestPlan.Status;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Fills the hop additions of a year's gyles from the lots on hand: one optimisation problem over all of them.
 *
 * <p>Every plan meets these: the bitterness of each gyle within its tolerance; doses and doses of oil exactly; bittering
 * additions in the proportions of EBU that they are to keep; no lot beyond its stock, before its day or where variety or form
 * isn't allowed; leaf enough for the bed in the hopback; the rules of the house ({@link PlanRules}). What is best among such
 * plans is the {@link Objective}.
 *
 * <p>A lot without alpha acid can't bring bitterness and a lot without an oil figure can't hold oil; both may fill a dose.
 * Weights are exact first and rounded to what can be weighed last; the plan shows both and what the rounding changes.
 */
public final class HarvestPlanner {

    /** A bitterness stands at the end of its tolerance when it is no further from it than this, EBU. */
    private static final double AT_THE_END_EBU = 1e-6;

    private HarvestPlanner() {}

    /**
     * Plans with the usual limits.
     *
     * @param gyles the gyles, in any order
     * @param lots the lots on hand or on their way
     * @param rules rules of the house
     * @param objective what is best
     * @return the plan, or what is short
     * @throws IllegalArgumentException see {@link #plan(List, List, PlanRules, Objective, PlanLimits)}
     */
    public static HarvestPlan plan(List<PlanGyle> gyles, List<PlanLot> lots, PlanRules rules, Objective objective) {
        return plan(gyles, lots, rules, objective, PlanLimits.USUAL);
    }

    /**
     * Plans.
     *
     * @param gyles the gyles, in any order
     * @param lots the lots on hand or on their way
     * @param rules rules of the house
     * @param objective what is best
     * @param limits how long to look
     * @return the plan, or what is short
     * @throws IllegalArgumentException if two gyles or two lots have one id; if alpha figures of two laboratory methods would
     *     meet in a beer without a stated factor; if the cost is to be least and lots that could be used have no price
     * @throws IllegalStateException if the limits are met before it is known whether there is a plan
     * @throws java.util.concurrent.CancellationException if the thread is interrupted meanwhile; its mark is cleared
     */
    public static HarvestPlan plan(
            List<PlanGyle> gyles, List<PlanLot> lots, PlanRules rules, Objective objective, PlanLimits limits) {
        LinearProgram.stopWhenAsked();
        PlanModel model = PlanModel.tight(gyles, lots, rules);
        if (objective == Objective.LEAST_COST) {
            requirePrices(model);
        }
        Steadiness steadiness = new Steadiness(model);
        PlanSolver.Found found = PlanSolver.solve(model, steadiness, objective, limits);
        List<String> remarks = new ArrayList<>(model.remarks());
        if (found.kg().isPresent()) {
            Status status = found.proved() ? Status.OPTIMAL : Status.FEASIBLE;
            return plan(
                    model,
                    steadiness,
                    status,
                    objective,
                    found.goals(),
                    found.kg().get(),
                    remarks);
        }
        if (found.steadiest().isPresent()) {
            return none(objective, List.of(tooSteady(rules, found.steadiest().get())), remarks);
        }
        Diagnosis.Found diagnosis = Diagnosis.of(model.loose(), limits);
        if (!diagnosis.shortfalls().isEmpty()) {
            return none(objective, diagnosis.shortfalls(), remarks);
        }
        remarks.add(
                "the limit of " + limits.mostSteps()
                        + " steps was met before the best plan was found; this one meets every requirement but the bound on changes");
        return plan(
                model,
                steadiness,
                Status.FEASIBLE,
                objective,
                List.of(),
                diagnosis.nearest().x(),
                remarks);
    }

    private static HarvestPlan plan(
            PlanModel model,
            Steadiness steadiness,
            Status status,
            Objective objective,
            List<Goal> goals,
            double[] kg,
            List<String> remarks) {
        PlanReport report = new PlanReport(model, kg, remarks);
        List<GyleTotal> totals = report.gyles();
        if (objective == Objective.LEAST_COST) {
            long low = totals.stream()
                    .filter(gyle -> gyle.toleranceEbu() > 0
                            && gyle.ebu() <= gyle.targetEbu() - gyle.toleranceEbu() + AT_THE_END_EBU)
                    .count();
            if (low > 0) {
                remarks.add("least cost takes " + low + " of " + totals.size()
                        + " gyles to the low end of their bitterness; a narrower tolerance holds them nearer to it");
            }
        }
        outOnTheScales(totals).ifPresent(remarks::add);
        Optional<ShareChange> largest = steadiness.largest(report.kg());
        return new HarvestPlan(
                status,
                objective,
                goals,
                report.allocations(),
                report.additions(),
                totals,
                report.lots(),
                report.changes(),
                largest,
                List.of(),
                remarks);
    }

    /** Gyles that are within their tolerance as computed and are not once their hops are weighed out. */
    private static Optional<String> outOnTheScales(List<GyleTotal> totals) {
        List<String> out = totals.stream()
                .filter(gyle -> Math.abs(gyle.weighedEbu() - gyle.targetEbu()) > gyle.toleranceEbu() + AT_THE_END_EBU)
                .filter(gyle -> Math.abs(gyle.ebu() - gyle.targetEbu()) <= gyle.toleranceEbu() + AT_THE_END_EBU)
                .map(gyle -> gyle.gyle() + " (" + Figures.fixed(gyle.weighedEbu(), 2) + " for "
                        + Figures.fixed(gyle.targetEbu(), 2) + ")")
                .toList();
        return out.isEmpty()
                ? Optional.empty()
                : Optional.of("as weighed out, " + out.size() + " of " + totals.size()
                        + " gyles leave the tolerance of their bitterness: " + String.join(", ", out)
                        + "; weigh hops in smaller steps, or narrow the tolerance by what a step brings");
    }

    private static HarvestPlan none(Objective objective, List<Shortfall> shortfalls, List<String> remarks) {
        return new HarvestPlan(
                Status.INFEASIBLE,
                objective,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                shortfalls,
                remarks);
    }

    private static Shortfall tooSteady(PlanRules rules, Goal change) {
        return new Shortfall(
                "a lot's share of an addition has to change by " + Figures.percent(change.reached())
                        + " from one gyle to the next where " + Figures.percent(rules.mostChange())
                        + " is the most (no plan is known to be steadier; none can be under "
                        + Figures.percent(change.bound()) + ")",
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "allow a change of " + Figures.percent(change.reached())
                        + ", or bring the next lot in before the last one ends");
    }

    private static void requirePrices(PlanModel model) {
        List<String> unpriced = new ArrayList<>();
        for (int l = 0; l < model.lots().size(); l++) {
            if (model.lot(l).pricePerKg().isEmpty() && !model.columnsOfLot(l).isEmpty()) {
                unpriced.add(model.lot(l).words());
            }
        }
        if (!unpriced.isEmpty()) {
            throw new IllegalArgumentException(
                    "least cost: expected a price for every lot that could be used, found none for "
                            + String.join(", ", unpriced));
        }
    }
}
