package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** What a brewer expects of a plan, worked out by hand: EBU of a kilogram of alpha acid in 1000 L at 30 % is 300. */
class HarvestPlannerTest {

    private static final double HAND = 1e-9;
    private static final double START = Plans.ebuPerKgAlpha(0.3);

    private static HarvestPlan cheapest(List<PlanGyle> gyles, PlanLot... lots) {
        return HarvestPlanner.plan(gyles, List.of(lots), PlanRules.NONE, Objective.LEAST_COST);
    }

    private static PlanGyle bitter(double ebu) {
        return Plans.gyle(1, "bitter", ebu, PlanAddition.bittering("start", "Fuggle", Plans.none(), START));
    }

    @Test
    void one_lot_brings_its_bitterness_by_mass_of_alpha_acid() {
        HarvestPlan plan = cheapest(List.of(bitter(30)), Plans.lot("A", "Fuggle", 0.05, 10, 12));
        assertEquals(HarvestPlan.Status.OPTIMAL, plan.status());
        assertEquals(30 / (0.05 * START), plan.allocations().get(0).kg(), HAND);
        assertEquals(2 * 12.0, plan.cost().orElseThrow(), HAND);
    }

    @Test
    void the_lot_whose_alpha_acid_is_cheapest_goes_first_and_the_other_takes_the_rest() {
        // £240 and £200 a kg of alpha acid; 30 EBU take 0.1 kg of it; B has 0.06 kg
        HarvestPlan plan = cheapest(
                List.of(bitter(30)), Plans.lot("A", "Fuggle", 0.05, 10, 12), Plans.lot("B", "Fuggle", 0.06, 1, 12));
        assertEquals(0.04 * 240 + 0.06 * 200, plan.cost().orElseThrow(), 1e-6);
    }

    @Test
    void halving_the_alpha_doubles_the_hops_to_the_last_digit() {
        double rich = cheapest(List.of(bitter(28)), Plans.lot("A", "Fuggle", 0.08, 99, 1))
                .allocations()
                .get(0)
                .kg();
        double lean = cheapest(List.of(bitter(28)), Plans.lot("A", "Fuggle", 0.04, 99, 1))
                .allocations()
                .get(0)
                .kg();
        assertEquals(2, lean / rich, 1e-12);
    }

    @Test
    void a_variety_at_its_lowest_and_highest_recorded_alpha_keeps_its_bitterness() {
        // USDA-ARS Corvallis, Fuggle over 13 years: 2.4, 5.1 and 6.1 % alpha acid; mass factors 2.1250 and 0.8361
        double mean = cheapest(List.of(bitter(28)), Plans.lot("A", "Fuggle", 0.051, 99, 1))
                .allocations()
                .get(0)
                .kg();
        HarvestPlan low = cheapest(List.of(bitter(28)), Plans.lot("A", "Fuggle", 0.024, 99, 1));
        HarvestPlan high = cheapest(List.of(bitter(28)), Plans.lot("A", "Fuggle", 0.061, 99, 1));
        assertEquals(2.1250, low.allocations().get(0).kg() / mean, 5e-5);
        assertEquals(0.8361, high.allocations().get(0).kg() / mean, 5e-5);
        assertEquals(28, low.gyles().get(0).ebu(), HAND);
        assertEquals(28, high.gyles().get(0).ebu(), HAND);
    }

    @Test
    void without_stock_it_says_how_much_is_short() {
        HarvestPlan plan = cheapest(List.of(bitter(30)), Plans.lot("A", "Fuggle", 0.05, 0.5, 12));
        assertEquals(HarvestPlan.Status.INFEASIBLE, plan.status());
        assertTrue(plan.allocations().isEmpty());
        assertEquals(1.5, plan.shortfalls().get(0).kg().orElseThrow(), 1e-6);
        assertEquals(0.075, plan.shortfalls().get(0).alphaKg().orElseThrow(), 1e-6);
        assertEquals(
                HarvestPlan.Status.INFEASIBLE,
                cheapest(List.of(bitter(30)), Plans.lot("A", "Fuggle", 0.05, 0, 1))
                        .status());
        assertEquals(
                HarvestPlan.Status.INFEASIBLE, cheapest(List.of(bitter(30))).status());
    }

    @Test
    void equal_lots_are_as_good_as_each_other() {
        HarvestPlan plan = cheapest(
                List.of(bitter(30)), Plans.lot("A", "Fuggle", 0.05, 1, 12), Plans.lot("B", "Fuggle", 0.05, 1, 12));
        assertEquals(HarvestPlan.Status.OPTIMAL, plan.status());
        assertEquals(24, plan.cost().orElseThrow(), 1e-6);
    }

    @Test
    void a_lot_without_alpha_acid_bitters_nothing_but_can_fill_a_dose() {
        assertEquals(
                HarvestPlan.Status.INFEASIBLE,
                cheapest(List.of(bitter(30)), Plans.lot("A", "Fuggle", 0, 99, 12))
                        .status());
        PlanGyle gyle = Plans.gyle(
                1,
                "bitter",
                30,
                PlanAddition.bittering("start", "Fuggle", Plans.none(), START),
                PlanAddition.dose("dry hop", "Saaz", 1.5, 0));
        HarvestPlan plan =
                cheapest(List.of(gyle), Plans.lot("A", "Fuggle", 0.05, 9, 12), Plans.lot("Z", "Saaz", 0, 9, 10));
        assertEquals(HarvestPlan.Status.OPTIMAL, plan.status());
        assertEquals(2 * 12 + 1.5 * 10, plan.cost().orElseThrow(), 1e-6);
    }

    @Test
    void a_lot_newer_than_the_gyle_stays_out_of_it() {
        PlanLot later = Plans.from(Plans.lot("A", "Fuggle", 0.05, 99, 12), Plans.NEW_YEAR.plusYears(1));
        assertEquals(
                HarvestPlan.Status.INFEASIBLE,
                cheapest(List.of(bitter(30)), later).status());
    }

    @Test
    void no_lot_carries_more_of_an_addition_than_the_house_allows() {
        PlanRules rules = new PlanRules(0.6, Double.POSITIVE_INFINITY, 1, 0, AlphaMethodFactors.NONE);
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(bitter(30)),
                List.of(Plans.lot("A", "Fuggle", 0.05, 99, 1), Plans.lot("B", "Fuggle", 0.05, 99, 20)),
                rules,
                Objective.LEAST_COST);
        assertEquals(
                0.6,
                plan.allocations().stream()
                        .mapToDouble(HarvestPlan.Allocation::share)
                        .max()
                        .orElseThrow(),
                1e-9);
    }

    @Test
    void the_oldest_crop_goes_first() {
        PlanLot old = Plans.lot("old", "Fuggle", 2025, 0.04, 1, Plans.none(), Plans.some(99));
        PlanLot young = Plans.lot("young", "Fuggle", 2026, 0.06, 99, Plans.none(), Plans.some(1));
        HarvestPlan plan =
                HarvestPlanner.plan(List.of(bitter(30)), List.of(old, young), PlanRules.NONE, Objective.OLDEST_FIRST);
        assertEquals(
                1.0,
                plan.lots().stream()
                        .filter(lot -> lot.lot().equals("old"))
                        .findFirst()
                        .orElseThrow()
                        .usedKg(),
                1e-6);
    }

    @Test
    void a_pack_that_must_be_used_up_is_paid_for_whole() {
        PlanLot packed = Plans.lot("A", "Fuggle", 2026, 0.05, 20, Plans.some(5), Plans.some(12));
        HarvestPlan plan = cheapest(List.of(bitter(30)), packed);
        assertEquals(5 * 12, plan.cost().orElseThrow(), 1e-6);
        assertEquals(3, plan.lots().get(0).wasteKg(), 1e-6);
    }

    @Test
    void the_steadiest_plan_blends_the_same_all_year_where_it_can() {
        List<PlanGyle> gyles = List.of(
                bitter(30),
                Plans.gyle(2, "bitter", 30, PlanAddition.bittering("start", "Fuggle", Plans.none(), START)));
        List<PlanLot> lots = List.of(Plans.lot("A", "Fuggle", 0.05, 2, 1), Plans.lot("B", "Fuggle", 0.05, 2, 9));
        HarvestPlan cheap = HarvestPlanner.plan(gyles, lots, PlanRules.NONE, Objective.LEAST_COST);
        HarvestPlan steady = HarvestPlanner.plan(gyles, lots, PlanRules.NONE, Objective.STEADIEST);
        assertEquals(0, steady.largestChange().orElseThrow().size(), 1e-9);
        assertTrue(cheap.largestChange().orElseThrow().size() >= 0);
        PlanRules bound = new PlanRules(1, Double.POSITIVE_INFINITY, 0.1, 0, AlphaMethodFactors.NONE);
        HarvestPlan held = HarvestPlanner.plan(gyles, lots, bound, Objective.LEAST_COST);
        assertTrue(held.largestChange().orElseThrow().size() <= 0.1 + 1e-9);
    }

    @Test
    void alphas_of_two_methods_never_meet_without_a_factor() {
        PlanLot hplc =
                Plans.of(Plans.lot("A", "Fuggle", 0.05, 9, 12), HopForm.LEAF, AlphaMethod.HPLC, OptionalDouble.empty());
        assertThrows(IllegalArgumentException.class, () -> cheapest(List.of(bitter(30)), hplc));
        PlanRules stated = new PlanRules(
                1,
                Double.POSITIVE_INFINITY,
                1,
                0,
                new AlphaMethodFactors(List.of(new AlphaMethodFactors.Factor(
                        AlphaMethod.HPLC, AlphaMethod.LEAD_CONDUCTANCE, 1.1, "stated by the brewery"))));
        HarvestPlan plan = HarvestPlanner.plan(List.of(bitter(30)), List.of(hplc), stated, Objective.LEAST_COST);
        assertEquals(2 / 1.1, plan.allocations().get(0).kg(), 1e-9);
    }

    @Test
    void two_lots_with_one_id_and_a_lot_without_price_are_refused() {
        PlanLot lot = Plans.lot("A", "Fuggle", 0.05, 9, 12);
        assertThrows(IllegalArgumentException.class, () -> cheapest(List.of(bitter(30)), lot, lot));
        PlanLot unpriced = Plans.lot("A", "Fuggle", 2026, 0.05, 9, Plans.none(), Plans.none());
        assertThrows(IllegalArgumentException.class, () -> cheapest(List.of(bitter(30)), unpriced));
    }

    @Test
    void weighing_is_last_and_its_drift_is_told_apart() {
        PlanRules tenths = new PlanRules(1, Double.POSITIVE_INFINITY, 1, 0.1, AlphaMethodFactors.NONE);
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(bitter(31)), List.of(Plans.lot("A", "Fuggle", 0.05, 9, 12)), tenths, Objective.LEAST_COST);
        assertEquals(31, plan.gyles().get(0).ebu(), 1e-9);
        assertEquals(2.1, plan.allocations().get(0).weighedKg(), 1e-9);
        assertEquals(2.1 * 0.05 * START - 31, plan.gyles().get(0).driftEbu(), 1e-9);
    }

    @Test
    void a_year_of_gyles_is_planned_and_every_figure_can_be_asked_for() {
        Random random = new Random(20261125L);
        List<PlanGyle> gyles = Plans.year(random, 20);
        List<PlanLot> lots = Plans.lots(random, 40, 10, 60, Plans.none());
        HarvestPlan plan = HarvestPlanner.plan(gyles, lots, PlanRules.NONE, Objective.LEAST_COST);
        assertEquals(HarvestPlan.Status.OPTIMAL, plan.status());
        for (HarvestPlan.Goal goal : plan.goals()) {
            assertTrue(goal.gap() <= 1e-6 * Math.max(1, goal.reached()), goal.toString());
        }
        for (HarvestPlan.GyleTotal total : plan.gyles()) {
            PlanGyle gyle = gyles.stream()
                    .filter(each -> each.id().equals(total.gyle()))
                    .findFirst()
                    .orElseThrow();
            assertTrue(Math.abs(total.ebu() - gyle.targetEbu()) <= gyle.toleranceEbu() + 1e-6, total.toString());
        }
        assertFalse(plan.explanation().parts().isEmpty());
    }

    @Test
    void an_interrupted_thread_stops_the_planner() {
        Thread.currentThread().interrupt();
        assertThrows(
                CancellationException.class,
                () -> cheapest(List.of(bitter(30)), Plans.lot("A", "Fuggle", 0.05, 9, 12)));
        assertFalse(Thread.interrupted());
    }
}
