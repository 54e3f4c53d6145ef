package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.harvest.HarvestPlan.Allocation;
import costrel.harvest.HarvestPlan.Status;
import costrel.hops.AlphaMethodFactors;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The same blend all year, as far as the lots let it. */
class SteadyTest {

    private static final double EQUAL = 1e-7;

    private static List<PlanGyle> doses(int gyles) {
        List<PlanGyle> all = new ArrayList<>();
        for (int g = 1; g <= gyles; g++) {
            all.add(Plans.gyle(g, "bitter", 0, PlanAddition.dose("dry hop", "Fuggle", 1, 0)));
        }
        return all;
    }

    @Test
    void an_ending_lot_is_let_down_by_equal_steps() {
        // Five doses of 1 kg; the new lot is there from the third. The old lot carries two and then has s kg for three
        // more:
        // shares 1 − d, 1 − 2d, 1 − 3d use 3 − 6d, so d = (3 − s)/6.
        PlanLot young = Plans.from(Plans.lot("young", "Fuggle", 0.05, 9, 12), Plans.NEW_YEAR.plusWeeks(3));
        for (double s : new double[] {1, 1.5, 2, 2.7, 3}) {
            PlanLot old = Plans.lot("old", "Fuggle", 0.05, 2 + s, 12);
            HarvestPlan plan = HarvestPlanner.plan(doses(5), List.of(old, young), PlanRules.NONE, Objective.STEADIEST);
            assertEquals(Status.OPTIMAL, plan.status());
            assertEquals((3 - s) / 6, plan.goals().get(0).reached(), EQUAL);
            assertEquals((3 - s) / 6, plan.largestChange().orElseThrow().size(), EQUAL);
        }
    }

    @Test
    void the_figure_is_the_largest_change_of_the_weights_in_the_plan() {
        Random random = new Random(4);
        List<PlanGyle> gyles = Plans.year(random, 15);
        List<PlanLot> lots = Plans.lots(random, 40, 2, 6, Plans.none());
        for (Objective objective : Objective.values()) {
            HarvestPlan plan = HarvestPlanner.plan(gyles, lots, PlanRules.NONE, objective);
            assertEquals(
                    largestChange(gyles, plan),
                    plan.largestChange().orElseThrow().size(),
                    EQUAL);
        }
    }

    @Test
    void no_objective_is_steadier_than_the_steadiest() {
        Random random = new Random(5);
        List<PlanGyle> gyles = Plans.year(random, 15);
        List<PlanLot> lots = Plans.lots(random, 40, 2, 6, Plans.none());
        HarvestPlan steady = HarvestPlanner.plan(gyles, lots, PlanRules.NONE, Objective.STEADIEST);
        HarvestPlan cheap = HarvestPlanner.plan(gyles, lots, PlanRules.NONE, Objective.LEAST_COST);
        double change = steady.largestChange().orElseThrow().size();
        assertTrue(change < cheap.largestChange().orElseThrow().size());
        assertTrue(steady.cost().orElseThrow() >= cheap.cost().orElseThrow());

        PlanRules bound = new PlanRules(1, Double.POSITIVE_INFINITY, change + 0.1, 0, AlphaMethodFactors.NONE);
        HarvestPlan between = HarvestPlanner.plan(gyles, lots, bound, Objective.LEAST_COST);
        assertTrue(largestChange(gyles, between) <= change + 0.1 + EQUAL);
        assertTrue(between.cost().orElseThrow() >= cheap.cost().orElseThrow() - EQUAL);
        assertTrue(between.goals().get(0).bound() <= between.goals().get(0).reached());
    }

    /** From the allocations: share of a lot = its part of the EBU of a bittering addition, or of the weight of a dose. */
    private static double largestChange(List<PlanGyle> gyles, HarvestPlan plan) {
        Map<String, Map<String, Double>> last = new HashMap<>();
        double largest = 0;
        for (PlanGyle gyle : gyles) {
            for (PlanAddition addition : gyle.additions()) {
                Map<String, Double> shares = new HashMap<>();
                double total = 0;
                for (Allocation line : plan.allocations()) {
                    if (line.gyle().equals(gyle.id()) && line.addition().equals(addition.label())) {
                        double held = addition.doseKg().isPresent() ? line.kg() : line.kg() * line.alpha();
                        shares.put(line.lot(), held);
                        total += held;
                    }
                }
                double sum = total;
                shares.replaceAll((lot, held) -> held / sum);
                Map<String, Double> before = last.put(gyle.beer() + addition.label(), shares);
                if (before != null) {
                    for (String lot : union(before, shares)) {
                        largest = Math.max(
                                largest, Math.abs(shares.getOrDefault(lot, 0.0) - before.getOrDefault(lot, 0.0)));
                    }
                }
            }
        }
        return largest;
    }

    private static List<String> union(Map<String, Double> one, Map<String, Double> other) {
        List<String> lots = new ArrayList<>(one.keySet());
        lots.addAll(other.keySet());
        return lots;
    }
}
