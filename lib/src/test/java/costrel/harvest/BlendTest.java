package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.harvest.HarvestPlan.Change;
import costrel.harvest.HarvestPlan.Status;
import costrel.hops.AlphaBalance;
import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Plans that conservation of mass alone decides. */
class BlendTest {

    private static final double IDENTITY = 1e-12;
    private static final double PRINTED_FACTOR = 5e-5;
    private static final double START = Plans.ebuPerKgAlpha(0.3);
    private static final double LATE = Plans.ebuPerKgAlpha(0.1);

    private static PlanAddition start() {
        return PlanAddition.bittering("start", "Fuggle", Plans.none(), START);
    }

    private static double kgOf(HarvestPlan plan, String lot) {
        return plan.allocations().stream()
                .filter(line -> line.lot().equals(lot))
                .mapToDouble(HarvestPlan.Allocation::kg)
                .sum();
    }

    @Test
    void a_dose_that_must_also_bring_the_bitterness_is_blended_by_the_lever_rule() {
        Random random = new Random(Long.getLong("seed", 17650101L));
        for (int i = 0; i < 100; i++) {
            double a = 0.03 + 0.03 * random.nextDouble();
            double b = 0.08 + 0.04 * random.nextDouble();
            double wanted = a + (b - a) * random.nextDouble();
            double doseKg = 1 + 5 * random.nextDouble();
            PlanGyle gyle =
                    Plans.gyle(1, "ale", doseKg * wanted * LATE, PlanAddition.dose("late", "Fuggle", doseKg, LATE));
            HarvestPlan plan = HarvestPlanner.plan(
                    List.of(gyle),
                    List.of(Plans.lot("A", "Fuggle", a, 99, 9), Plans.lot("B", "Fuggle", b, 99, 8)),
                    PlanRules.NONE,
                    Objective.LEAST_COST);
            double share = AlphaBalance.shareOfLot(a, b, wanted);
            assertEquals(share * doseKg, kgOf(plan, "A"), IDENTITY * 100 * doseKg, "case " + i);
            assertEquals(doseKg, kgOf(plan, "A") + kgOf(plan, "B"), IDENTITY * doseKg, "case " + i);
        }
    }

    @Test
    void what_an_old_lot_leaves_over_the_new_one_brings_by_mass_of_alpha_acid() {
        // m₂ = (need − m₁·α₁)/α₂ with the whole of the old lot used first
        PlanLot old = Plans.lot("old", "Fuggle", 2025, 0.041, 1.3, Plans.none(), Plans.none());
        PlanLot young = Plans.lot("young", "Fuggle", 2026, 0.062, 99, Plans.none(), Plans.none());
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(Plans.gyle(1, "ale", 30, start())),
                List.of(old, young),
                PlanRules.NONE,
                Objective.OLDEST_FIRST);
        double needKg = 30 / START;
        assertEquals((needKg - 1.3 * 0.041) / 0.062, kgOf(plan, "young"), 1e-9);
    }

    @Test
    void a_new_harvest_keeps_the_bitterness_and_takes_the_weight_by_the_ratio_of_alpha_acids() {
        for (Map<String, String> row : ReferenceTable.read("harvest/usda_crop_years.csv")) {
            String variety = row.getOrDefault("variety", "");
            double mean = ReferenceTable.number(row, "alpha mean %") / 100;
            for (String end : List.of("low", "high")) {
                double alpha = ReferenceTable.number(row, "alpha " + end + " %") / 100;
                double lastKg = 30 / (START * mean);
                PlanAddition addition = PlanAddition.bittering("start", variety, Plans.none(), START)
                        .after(new PlanAddition.LastYear("last", lastKg, Plans.some(mean), Plans.none()));
                HarvestPlan plan = HarvestPlanner.plan(
                        List.of(Plans.gyle(1, "ale", 30, addition)),
                        List.of(Plans.lot("new", variety, alpha, 99, 10)),
                        PlanRules.NONE,
                        Objective.LEAST_COST);
                Change change = plan.changes().get(0);
                assertEquals(30, plan.gyles().get(0).ebu(), 30 * IDENTITY, variety);
                assertEquals(mean / alpha, change.kg() / change.lastKg(), IDENTITY * 10, variety);
                assertEquals(mean / alpha, change.hopFactor().orElseThrow(), IDENTITY * 10, variety);
                assertEquals(1, change.heldFactor().orElseThrow(), IDENTITY * 10, variety);
                assertEquals(
                        ReferenceTable.number(row, "mass factor at " + end),
                        change.kg() / change.lastKg(),
                        PRINTED_FACTOR,
                        variety);
                assertTrue(change.why().contains("last year"), change.why());
            }
        }
    }

    @Test
    void a_change_of_weight_is_the_hops_factor_times_the_factor_of_what_is_held() {
        // late hops at twice last year's alpha acid leave less for the start of the boil
        PlanAddition start = start().after(new PlanAddition.LastYear("last", 2, Plans.some(0.05), Plans.none()));
        PlanAddition late = PlanAddition.dose("late", "Saaz", 1.5, LATE)
                .after(new PlanAddition.LastYear("old Saaz", 1.5, Plans.some(0.03), Plans.none()));
        PlanAddition dry = PlanAddition.oil("dry hop", "Golding", 10, 0)
                .after(new PlanAddition.LastYear("old Golding", 1.25, Plans.some(0.05), Plans.some(0.8)));
        PlanLot golding = Plans.of(
                Plans.lot("G", "Golding", 0.05, 9, 9), HopForm.LEAF, AlphaMethod.LEAD_CONDUCTANCE, Plans.some(0.5));
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(Plans.gyle(1, "ale", 34.5, start, late, dry)),
                List.of(Plans.lot("F", "Fuggle", 0.04, 9, 9), Plans.lot("S", "Saaz", 0.06, 9, 9), golding),
                PlanRules.NONE,
                Objective.LEAST_COST);
        Change bittering = plan.changes().get(0);
        assertEquals(0.05 / 0.04, bittering.hopFactor().orElseThrow(), IDENTITY * 10);
        assertEquals(
                (34.5 - 1.5 * 0.06 * LATE) / (2 * 0.05 * START),
                bittering.heldFactor().orElseThrow(),
                IDENTITY * 10);
        for (Change change : plan.changes()) {
            assertEquals(
                    change.kg() / change.lastKg(),
                    change.hopFactor().orElseThrow() * change.heldFactor().orElseThrow(),
                    IDENTITY * 10,
                    change.toString());
        }
        assertEquals(1, plan.changes().get(1).hopFactor().orElseThrow(), 0);
        assertEquals(0.8 / 0.5, plan.changes().get(2).hopFactor().orElseThrow(), IDENTITY * 10);
        assertEquals(10 / (10 * 0.5), kgOf(plan, "G"), IDENTITY * 10);
    }

    @Test
    void bittering_additions_keep_their_proportions_of_bitterness_unless_one_is_free() {
        PlanAddition first = PlanAddition.bittering("start", "Fuggle", Plans.some(20), START);
        PlanAddition second = PlanAddition.bittering("half", "Golding", Plans.some(5), LATE);
        List<PlanLot> lots = List.of(Plans.lot("F", "Fuggle", 0.05, 99, 10), Plans.lot("G", "Golding", 0.05, 99, 10));
        HarvestPlan kept = HarvestPlanner.plan(
                List.of(Plans.gyle(1, "ale", 30, first, second)), lots, PlanRules.NONE, Objective.LEAST_COST);
        assertEquals(24, kept.additions().get(0).reached(), 30 * IDENTITY);
        assertEquals(6, kept.additions().get(1).reached(), 30 * IDENTITY);
        assertEquals(6, kept.additions().get(1).wanted(), 30 * IDENTITY);

        PlanAddition free = PlanAddition.bittering("half", "Golding", Plans.none(), LATE);
        HarvestPlan cheaper = HarvestPlanner.plan(
                List.of(Plans.gyle(1, "ale", 30, first, free)), lots, PlanRules.NONE, Objective.LEAST_COST);
        assertEquals(30, cheaper.additions().get(0).reached(), 30 * IDENTITY);
        assertTrue(cheaper.cost().orElseThrow() < kept.cost().orElseThrow());
    }

    @Test
    void least_cost_says_that_it_goes_to_the_low_end_of_a_tolerance() {
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(Plans.gyle(1, "ale", 30, 2, 0, start())),
                List.of(Plans.lot("A", "Fuggle", 0.05, 99, 10)),
                PlanRules.NONE,
                Objective.LEAST_COST);
        assertEquals(28, plan.gyles().get(0).ebu(), 1e-9);
        assertTrue(
                plan.remarks().toString().contains("low end of their bitterness"),
                plan.remarks().toString());
    }

    @Test
    void weighing_out_asks_no_lot_for_more_than_it_has() {
        // three doses of 0.66 kg are all of the lot; to the nearest tenth they would be 2.1 kg of 1.98
        PlanRules tenths = new PlanRules(1, Double.POSITIVE_INFINITY, 1, 0.1, AlphaMethodFactors.NONE);
        PlanAddition dose = PlanAddition.dose("dry hop", "Fuggle", 0.66, 0);
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(Plans.gyle(1, "ale", 0, dose), Plans.gyle(2, "ale", 0, dose), Plans.gyle(3, "ale", 0, dose)),
                List.of(Plans.lot("A", "Fuggle", 0.05, 1.98, 10)),
                tenths,
                Objective.LEAST_COST);
        assertEquals(Status.OPTIMAL, plan.status());
        assertEquals(1.98, plan.lots().get(0).usedKg(), 1e-9);
        assertEquals(1.9, plan.lots().get(0).weighedKg(), 1e-9);
        assertEquals(Plans.NEW_YEAR.plusWeeks(3), plan.lots().get(0).usedUpOn().orElseThrow());
        assertTrue(
                plan.remarks().toString().contains("2 weights rounded down"),
                plan.remarks().toString());
        double drift = plan.additions().stream()
                .mapToDouble(HarvestPlan.AdditionTotal::drift)
                .sum();
        assertEquals(1.9 - 1.98, drift, 1e-9);
    }

    @Test
    void figures_of_a_plan_can_be_followed_to_the_lot() {
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(Plans.gyle(1, "ale", 30, start())),
                List.of(Plans.lot("A", "Fuggle", 0.05, 2, 12)),
                PlanRules.NONE,
                Objective.LEAST_COST);
        String text = plan.explanation().text();
        for (String figure : List.of(
                "cost of the hops taken from the store: 24.0000",
                "ale, gyle G1 of 2027-01-11: 30.00 EBU",
                "Fuggle lot A: 2.00 kg",
                "2.0000 kg · alpha acid 5.00 % · 300.000 EBU for a kg of alpha acid",
                "used up on 2027-01-11")) {
            assertTrue(text.contains(figure), () -> "expected '" + figure + "' in:\n" + text);
        }
    }
}
