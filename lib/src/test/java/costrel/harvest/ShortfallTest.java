package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.harvest.HarvestPlan.Status;
import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A plan that can't be made says what is short, when, by how much and what would mend it; the mending is then tried. */
class ShortfallTest {

    private static final double KG = 1e-6;
    private static final double START = Plans.ebuPerKgAlpha(0.3);
    private static final double LATE = Plans.ebuPerKgAlpha(0.1);

    private static PlanAddition start() {
        return PlanAddition.bittering("start", "Fuggle", Plans.none(), START);
    }

    private static HarvestPlan plan(List<PlanGyle> gyles, PlanRules rules, PlanLot... lots) {
        return HarvestPlanner.plan(gyles, List.of(lots), rules, Objective.LEAST_COST);
    }

    private static Shortfall only(HarvestPlan plan) {
        assertEquals(Status.INFEASIBLE, plan.status());
        assertEquals(1, plan.shortfalls().size(), plan.shortfalls().toString());
        return plan.shortfalls().get(0);
    }

    private static void says(Shortfall shortfall, String... words) {
        for (String word : words) {
            assertTrue(shortfall.text().contains(word), () -> "expected '" + word + "' in: " + shortfall.text());
        }
    }

    @Test
    void a_lot_that_ends_early_is_short_in_the_months_after_it() {
        // each gyle takes 30 / (300 · 0.05) = 2 kg; five kilograms last to the middle of the third gyle
        List<PlanGyle> gyles = List.of(
                Plans.gyle(7, "bitter", 30, start()),
                Plans.gyle(8, "bitter", 30, start()),
                Plans.gyle(9, "bitter", 30, start()),
                Plans.gyle(13, "bitter", 30, start()));
        HarvestPlan plan = plan(gyles, PlanRules.NONE, Plans.lot("A", "Fuggle", 0.05, 5, 12));

        assertEquals(Status.INFEASIBLE, plan.status());
        assertEquals(2, plan.shortfalls().size());
        Shortfall march = plan.shortfalls().get(0);
        Shortfall april = plan.shortfalls().get(1);
        assertEquals(YearMonth.of(2027, 3), march.month().orElseThrow());
        assertEquals(1, march.kg().orElseThrow(), KG);
        assertEquals(0.05, march.alphaKg().orElseThrow(), KG);
        says(march, "Fuggle", "1.00 kg short in March 2027", "0.0500 kg alpha acid", "more of lot A", "substitute");
        assertEquals(YearMonth.of(2027, 4), april.month().orElseThrow());
        assertEquals(2, april.kg().orElseThrow(), KG);
    }

    @Test
    void the_kilograms_asked_for_are_enough_and_a_hundredth_less_is_not() {
        long seed = Long.getLong("seed", 18110401L);
        Random random = new Random(seed);
        int mended = 0;
        for (int i = 0; i < 100; i++) {
            SmallHarvest harvest =
                    new SmallHarvest(random, SmallHarvest.Kind.BITTERING_AND_DOSE, 2, 2, Plans.none(), 1);
            HarvestPlan plan = HarvestPlanner.plan(harvest.gyles, harvest.lots, harvest.rules, Objective.LEAST_COST);
            boolean stockOnly = !plan.shortfalls().isEmpty()
                    && plan.shortfalls().stream().allMatch(each -> each.mend().contains(" more of lot "));
            if (!stockOnly) {
                continue;
            }
            mended++;
            String at = "-Dseed=" + seed + ", case " + i;
            assertEquals(Status.OPTIMAL, withMore(harvest, plan.shortfalls(), 1 + 1e-6), at);
            assertEquals(Status.INFEASIBLE, withMore(harvest, plan.shortfalls(), 0.99), at);
        }
        assertTrue(mended > 10, mended + " harvests were short of stock alone");
    }

    private static Status withMore(SmallHarvest harvest, List<Shortfall> shortfalls, double part) {
        List<PlanLot> lots = new ArrayList<>();
        for (PlanLot lot : harvest.lots) {
            double more = shortfalls.stream()
                    .filter(each -> each.mend().contains(" more of lot " + lot.id() + ","))
                    .mapToDouble(each -> each.kg().orElseThrow())
                    .sum();
            lots.add(new PlanLot(
                    lot.id(),
                    lot.variety(),
                    lot.form(),
                    lot.cropYear(),
                    lot.availableFrom(),
                    lot.method(),
                    lot.alphaByGyle(),
                    lot.oilMlPer100g(),
                    lot.stockKg() + part * more,
                    lot.wholePackKg(),
                    lot.pricePerKg()));
        }
        return HarvestPlanner.plan(harvest.gyles, lots, harvest.rules, Objective.LEAST_COST)
                .status();
    }

    @Test
    void a_substitute_mends_it_when_it_is_allowed_and_not_before() {
        PlanLot fuggle = Plans.lot("A", "Fuggle", 0.05, 1, 12);
        PlanLot golding = Plans.lot("B", "Golding", 0.05, 9, 12);
        assertEquals(
                Status.INFEASIBLE,
                plan(List.of(Plans.gyle(1, "bitter", 30, start())), PlanRules.NONE, fuggle, golding)
                        .status());
        PlanGyle allowing = Plans.gyle(1, "bitter", 30, start().allowing(Set.of("Golding")));
        assertEquals(
                Status.OPTIMAL,
                plan(List.of(allowing), PlanRules.NONE, fuggle, golding).status());
    }

    @Test
    void a_lot_that_comes_too_late_is_named_with_its_day() {
        PlanLot late = Plans.from(Plans.lot("A", "Fuggle", 0.05, 9, 12), LocalDate.of(2027, 10, 1));
        Shortfall shortfall = only(plan(List.of(Plans.gyle(1, "bitter", 30, start())), PlanRules.NONE, late));
        assertEquals(0.1, shortfall.alphaKg().orElseThrow(), KG);
        says(
                shortfall,
                "30.00 EBU short",
                "no lot can go into start",
                "lot A is there from 2027-10-01",
                "by 2027-01-11");
    }

    @Test
    void late_hops_that_bring_too_much_bitterness_are_blamed() {
        // 3 kg · 0.10 · 100 = 30 EBU where 20 + 1 are wanted
        PlanGyle gyle = Plans.gyle(1, "mild", 20, 1, 0, start(), PlanAddition.dose("late", "Fuggle", 3, LATE));
        Shortfall shortfall = only(plan(List.of(gyle), PlanRules.NONE, Plans.lot("A", "Fuggle", 0.10, 99, 12)));
        says(shortfall, "9.00 EBU more than 21.00 EBU", "a lower dose of late hops");
    }

    @Test
    void a_bed_without_enough_leaf_is_told_in_kilograms() {
        // 2 kg of leaf is what the bitterness allows
        PlanGyle gyle = Plans.gyle(1, "bitter", 30, 0, 3.5, start());
        Shortfall shortfall = only(plan(List.of(gyle), PlanRules.NONE, Plans.lot("A", "Fuggle", 0.05, 99, 12)));
        assertEquals(1.5, shortfall.kg().orElseThrow(), KG);
        says(shortfall, "bed of leaf hops is 1.50 kg short of 3.50 kg");
    }

    @Test
    void pellets_make_no_bed() {
        PlanLot pellets = Plans.of(
                Plans.lot("P", "Fuggle", 0.05, 99, 12), HopForm.T90, AlphaMethod.LEAD_CONDUCTANCE, Plans.none());
        PlanGyle gyle = Plans.gyle(1, "bitter", 30, 0, 1, start());
        says(only(plan(List.of(gyle), PlanRules.NONE, pellets)), "1.00 kg short of 1.00 kg");
    }

    @Test
    void an_addition_that_holds_oil_needs_a_lot_with_a_figure_for_it() {
        PlanGyle gyle = Plans.gyle(1, "bitter", 30, start(), PlanAddition.oil("late", "Saaz", 12, 0));
        Shortfall shortfall = only(plan(
                List.of(gyle),
                PlanRules.NONE,
                Plans.lot("A", "Fuggle", 0.05, 9, 12),
                Plans.lot("Z", "Saaz", 0.03, 9, 12)));
        says(shortfall, "late: Saaz is 12.0 mL of oil short", "lot Z", "no figure for oil", "with a figure for oil");
    }

    @Test
    void one_lot_alone_breaks_the_rule_that_none_carries_an_addition() {
        PlanRules half = new PlanRules(0.5, Double.POSITIVE_INFINITY, 1, 0, AlphaMethodFactors.NONE);
        PlanGyle gyle = Plans.gyle(1, "bitter", 0, PlanAddition.dose("dry hop", "Saaz", 2, 0));
        Shortfall shortfall = only(plan(List.of(gyle), half, Plans.lot("Z", "Saaz", 0.03, 9, 12)));
        says(shortfall, ", dry hop: Saaz lot Z would have to bring more than 50.00 %", "a further lot of Saaz");
    }

    @Test
    void alpha_acid_that_does_not_dissolve_is_told_in_milligrams() {
        // 60 EBU at a utilisation of 20 % are 300 mg/L of alpha acid
        PlanRules rules = new PlanRules(1, 250, 1, 0, AlphaMethodFactors.NONE);
        PlanGyle gyle = Plans.gyle(
                1, "strong", 60, PlanAddition.bittering("start", "Fuggle", Plans.none(), Plans.ebuPerKgAlpha(0.2)));
        Shortfall shortfall = only(plan(List.of(gyle), rules, Plans.lot("A", "Fuggle", 0.05, 99, 12)));
        assertEquals(0.05, shortfall.alphaKg().orElseThrow(), KG);
        says(shortfall, "300 mg/L", "250 mg/L dissolves", "split the addition");
    }

    @Test
    void a_beer_whose_additions_all_hold_their_dose_cannot_be_made_more_bitter() {
        PlanGyle gyle = Plans.gyle(1, "bitter", 30, PlanAddition.dose("late", "Fuggle", 2, LATE));
        Shortfall shortfall = only(plan(List.of(gyle), PlanRules.NONE, Plans.lot("A", "Fuggle", 0.05, 99, 12)));
        says(shortfall, "20.00 EBU short", "no addition holds bitterness", "let a copper addition hold bitterness");
    }

    @Test
    void a_bittering_addition_without_a_lot_stops_those_that_keep_their_proportion_with_it() {
        PlanGyle gyle = Plans.gyle(
                1,
                "bitter",
                30,
                PlanAddition.bittering("start", "Fuggle", Plans.some(0.6), START),
                PlanAddition.bittering("half", "Golding", Plans.some(0.4), START));
        Shortfall shortfall = only(plan(List.of(gyle), PlanRules.NONE, Plans.lot("A", "Fuggle", 0.05, 99, 12)));
        says(shortfall, "30.00 EBU short", "no lot can go into half", "a lot of Golding");
    }

    @Test
    void changes_that_cannot_be_kept_small_are_told_with_the_least_that_can() {
        // the old lot lasts for one gyle and the new one comes for the next: the whole blend changes
        PlanRules rules = new PlanRules(1, Double.POSITIVE_INFINITY, 0.3, 0, AlphaMethodFactors.NONE);
        List<PlanGyle> gyles = List.of(Plans.gyle(1, "bitter", 30, start()), Plans.gyle(2, "bitter", 30, start()));
        PlanLot old = Plans.lot("old", "Fuggle", 0.05, 2, 12);
        PlanLot young = Plans.from(Plans.lot("young", "Fuggle", 0.05, 9, 12), Plans.NEW_YEAR.plusWeeks(2));
        for (Objective objective : Objective.values()) {
            HarvestPlan plan = HarvestPlanner.plan(gyles, List.of(old, young), rules, objective);
            says(only(plan), "100.00 %", "30.00 % is the most", "allow a change of 100.00 %");
        }
    }

    @Test
    void an_infeasible_plan_weighs_nothing_out() {
        HarvestPlan plan = plan(
                List.of(Plans.gyle(1, "bitter", 30, start())), PlanRules.NONE, Plans.lot("A", "Fuggle", 0.05, 0, 12));
        assertTrue(plan.allocations().isEmpty()
                && plan.lots().isEmpty()
                && plan.goals().isEmpty());
        assertEquals(OptionalDouble.of(0), plan.cost());
        assertTrue(
                plan.explanation().text().contains("2.00 kg short in January 2027"),
                plan.explanation().text());
    }
}
