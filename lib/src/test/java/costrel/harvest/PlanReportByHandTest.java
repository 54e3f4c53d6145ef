package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.harvest.HarvestPlan.AdditionTotal;
import costrel.harvest.HarvestPlan.GyleTotal;
import costrel.harvest.HarvestPlan.Status;
import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import costrel.recipe.Holds;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Totals, changes and remarks of small plans, each worked on paper; 300 and 200 EBU for a kilogram of alpha acid. */
class PlanReportByHandTest {
    private static final double KG = 1e-9;
    private static final double START = Plans.ebuPerKgAlpha(0.3);
    private static final double HALF = Plans.ebuPerKgAlpha(0.2);
    private static final double LATE = Plans.ebuPerKgAlpha(0.08);

    private static PlanAddition start(OptionalDouble share) {
        return PlanAddition.bittering("start", "Fuggle", share, START);
    }

    private static PlanRules weighedTo(double stepKg) {
        return new PlanRules(1, Double.POSITIVE_INFINITY, 1, stepKg, AlphaMethodFactors.NONE);
    }

    private static HarvestPlan plan(Objective objective, List<PlanGyle> gyles, PlanLot... lots) {
        return HarvestPlanner.plan(gyles, List.of(lots), PlanRules.NONE, objective);
    }

    private static PlanLot lot(String id, String variety, int cropYear, double alpha, double kg, OptionalDouble price) {
        return Plans.lot(id, variety, cropYear, alpha, kg, Plans.none(), price);
    }

    @Test
    void a_gyle_s_hops_leaf_bitterness_and_cost_are_its_own() {
        // 32.4 EBU: 1 kg of pellets at 3 % brings 1 × 0.03 × 80 = 2.4, the start 30: 2 kg at 5 %; the dry hops none
        PlanGyle first = Plans.gyle(
                1,
                "ale",
                32.4,
                start(Plans.none()),
                PlanAddition.dose("late", "Saaz", 1, LATE),
                PlanAddition.dose("dry hop", "Goldings", 0.5, 0));
        PlanGyle second = Plans.gyle(2, "stout", 45, start(Plans.none())); // 3 kg
        PlanLot pellets = Plans.of(
                lot("S", "Saaz", 2026, 0.03, 9, Plans.some(20)),
                HopForm.T90,
                AlphaMethod.LEAD_CONDUCTANCE,
                Plans.none());
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(first, second),
                List.of(
                        lot("A", "Fuggle", 2026, 0.05, 99, Plans.some(10)),
                        pellets,
                        lot("G", "Goldings", 2026, 0.04, 9, Plans.some(8))),
                weighedTo(0.3),
                Objective.LEAST_COST);
        GyleTotal ale = plan.gyles().get(0);
        GyleTotal stout = plan.gyles().get(1);

        assertEquals(32.4, ale.ebu(), KG);
        assertEquals(2, ale.leafKg(), KG);
        assertEquals(3.5, ale.kg(), KG);
        assertEquals(44, ale.cost().orElseThrow(), KG); // 20 + 20 + 4
        // to the nearest 0.3 kg: 2.1, 0.9 and 0.6
        assertEquals(2.1, ale.weighedLeafKg(), KG);
        assertEquals(2.1 * 0.05 * 300 + 0.9 * 0.03 * 80, ale.weighedEbu(), KG);
        assertEquals(3, stout.leafKg(), KG);
        assertEquals(3, stout.kg(), KG);
        assertEquals(30, stout.cost().orElseThrow(), KG);
        assertEquals(74, plan.cost().orElseThrow(), KG);
    }

    @Test
    void a_gyle_costs_nothing_that_is_known_where_one_of_its_lots_has_no_price() {
        List<PlanGyle> gyles = List.of(
                Plans.gyle(1, "ale", 30, start(Plans.none())),
                Plans.gyle(2, "ale", 30, start(Plans.none()), PlanAddition.dose("dry hop", "Styrian", 1, 0)));
        PlanLot fuggle = lot("A", "Fuggle", 2025, 0.05, 99, Plans.some(10));
        HarvestPlan plan =
                plan(Objective.OLDEST_FIRST, gyles, fuggle, lot("S", "Styrian", 2026, 0.03, 9, Plans.none()));
        HarvestPlan spare = plan(
                Objective.OLDEST_FIRST, gyles.subList(0, 1), fuggle, lot("N", "Fuggle", 2026, 0.05, 9, Plans.none()));

        assertEquals(20, plan.gyles().get(0).cost().orElseThrow(), KG);
        assertTrue(plan.gyles().get(1).cost().isEmpty() && plan.cost().isEmpty());
        assertEquals(20, spare.gyles().get(0).cost().orElseThrow(), KG);
        assertEquals(20, spare.cost().orElseThrow(), KG);
    }

    @Test
    void the_oldest_goes_first_though_less_would_do_of_the_new() {
        // 2 kg at 4 % bring 24 EBU, 0.2 kg at 10 % the other 6; 1 kg of the new alone would do
        HarvestPlan plan = plan(
                Objective.OLDEST_FIRST,
                List.of(Plans.gyle(1, "ale", 30, start(Plans.none()))),
                lot("old", "Fuggle", 2025, 0.04, 2, Plans.none()),
                lot("new", "Fuggle", 2026, 0.10, 9, Plans.none()));

        assertEquals(Status.OPTIMAL, plan.status());
        assertEquals(2, plan.lots().get(0).usedKg(), 1e-6);
        assertEquals(0.2, plan.lots().get(1).usedKg(), 1e-6);
        assertEquals(
                List.of("kg used of crop year 2025", "kg of all hops taken from the store"),
                plan.goals().stream().map(HarvestPlan.Goal::what).toList());
        assertEquals(2, plan.goals().get(0).reached(), 1e-6);
        assertEquals(2, plan.goals().get(0).bound(), 1e-6);
        assertEquals(2.2, plan.goals().get(1).reached(), 1e-6);
        assertEquals(2.2, plan.goals().get(1).bound(), 1e-6);
    }

    private static void assertTotal(AdditionTotal total, double wanted, double reached) {
        assertEquals(wanted, total.wanted(), KG, total.addition());
        assertEquals(reached, total.reached(), KG, total.addition());
    }

    @Test
    void bitterness_is_shared_out_as_the_shares_have_it() {
        List<AdditionTotal> totals = plan(
                        Objective.LEAST_COST,
                        List.of(
                                Plans.gyle(1, "ale", 30, start(Plans.some(0.7)), half(Plans.some(0.3))),
                                Plans.gyle(2, "ale", 40, start(Plans.some(6)), half(Plans.some(2))),
                                Plans.gyle(3, "ale", 30, start(Plans.none())),
                                Plans.gyle(4, "ale", 30, start(Plans.some(0)), half(Plans.none()))),
                        lot("A", "Fuggle", 2026, 0.05, 99, Plans.some(10)))
                .additions();

        assertTotal(totals.get(0), 21, 21);
        assertTotal(totals.get(1), 9, 9);
        assertTotal(totals.get(2), 30, 30);
        assertTotal(totals.get(3), 10, 10);
        assertTotal(totals.get(4), 30, 30);
        // a share of 0 takes none, though its alpha acid goes further
        assertTotal(totals.get(5), 0, 0);
        assertTotal(totals.get(6), 30, 30);
    }

    private static PlanAddition half(OptionalDouble share) {
        return PlanAddition.bittering("half", "Fuggle", share, HALF);
    }

    @Test
    void a_bed_of_leaf_may_take_a_gyle_to_the_high_end_of_its_tolerance() {
        // 2.1 kg at 5 % bring 31.5 EBU of 30 ± 2; 2.2 kg would bring 33
        PlanLot fuggle = lot("A", "Fuggle", 2026, 0.05, 99, Plans.some(10));
        for (PlanAddition[] additions : new PlanAddition[][] {
            {start(Plans.none())},
            {start(Plans.some(0.5)), PlanAddition.bittering("first wort", "Fuggle", Plans.some(0.5), START)}
        }) {
            HarvestPlan plan = plan(Objective.LEAST_COST, List.of(Plans.gyle(1, "ale", 30, 2, 2.1, additions)), fuggle);
            assertEquals(Status.OPTIMAL, plan.status());
            assertEquals(31.5, plan.gyles().get(0).ebu(), 1e-6);
            assertEquals(
                    Status.INFEASIBLE,
                    plan(Objective.LEAST_COST, List.of(Plans.gyle(1, "ale", 30, 2, 2.2, additions)), fuggle)
                            .status());
        }
    }

    private static HarvestPlan.Change change(PlanAddition addition, double alpha, PlanAddition.LastYear last) {
        PlanLot lot = Plans.of(
                lot("26-1", "Fuggle", 2026, alpha, 99, Plans.some(10)),
                HopForm.LEAF,
                AlphaMethod.LEAD_CONDUCTANCE,
                Plans.some(0.8));
        double ebu = addition.holds() == Holds.BITTERNESS ? 30 : 0;
        return plan(Objective.LEAST_COST, List.of(Plans.gyle(1, "ale", ebu, addition.after(last))), lot)
                .changes()
                .get(0);
    }

    private static PlanAddition.LastYear last(double kg, OptionalDouble alpha, OptionalDouble oil) {
        return new PlanAddition.LastYear("25-1", kg, alpha, oil);
    }

    @Test
    void a_change_of_weight_is_told_by_what_the_hops_had_and_have() {
        // 30 EBU: 2.5 kg at 4 %, and last year 2 kg at 5 %
        HarvestPlan.Change bitter = change(start(Plans.none()), 0.04, last(2, Plans.some(0.05), Plans.none()));
        assertEquals(1.25, bitter.hopFactor().orElseThrow(), KG);
        assertEquals(1, bitter.heldFactor().orElseThrow(), KG);
        assertEquals(
                "alpha acid 5.00 % last year, 4.00 % now (kg × 1.2500); kg × 1.0000 for the bitterness that is left to bring",
                bitter.why());
        // 4 mL of oil at 0.8 mL/100 g are 0.5 kg, and last year 0.4 kg at 1.0
        HarvestPlan.Change oil =
                change(PlanAddition.oil("dry hop", "Fuggle", 4, 0), 0.04, last(0.4, Plans.none(), Plans.some(1)));
        assertEquals("oil 1.00 mL/100 g last year, 0.80 now (kg × 1.2500); kg × 1.0000 for the dose of oil", oil.why());
        HarvestPlan.Change dose =
                change(PlanAddition.dose("dry hop", "Fuggle", 0.6, 0), 0.04, last(0.5, Plans.none(), Plans.none()));
        assertEquals("the dose is held; kg × 1.2000 for the dose of last year", dose.why());
    }

    @Test
    void a_change_that_cannot_be_told_says_what_is_unknown() {
        String alpha = "last year's alpha acid or weight is unknown, or nothing goes in now";
        PlanAddition dryHop = PlanAddition.oil("dry hop", "Fuggle", 4, 0);

        assertEquals(
                alpha,
                change(start(Plans.none()), 0.04, last(2, Plans.none(), Plans.none()))
                        .why());
        assertEquals(
                alpha,
                change(start(Plans.none()), 0.04, last(0, Plans.some(0.05), Plans.none()))
                        .why());
        assertEquals(
                alpha,
                change(start(Plans.none()), 0.04, last(2, Plans.some(0), Plans.none()))
                        .why());
        assertEquals(
                "last year's oil or weight is unknown, or nothing goes in now",
                change(dryHop, 0.04, last(2, Plans.some(0.05), Plans.none())).why());
    }

    private static List<String> remarks(PlanRules rules, PlanGyle gyle, PlanLot... lots) {
        return HarvestPlanner.plan(List.of(gyle), List.of(lots), rules, Objective.OLDEST_FIRST)
                .remarks();
    }

    private static PlanLot by(AlphaMethod method) {
        return Plans.of(lot("A", "Fuggle", 2026, 0.05, 99, Plans.none()), HopForm.LEAF, method, Plans.none());
    }

    @Test
    void alpha_acid_of_another_method_is_turned_or_told_and_in_dry_hops_left_alone() {
        PlanRules turned = new PlanRules(
                1,
                Double.POSITIVE_INFINITY,
                1,
                0,
                new AlphaMethodFactors(List.of(new AlphaMethodFactors.Factor(
                        AlphaMethod.HPLC, AlphaMethod.LEAD_CONDUCTANCE, 1.08, "stated by the brewery"))));
        PlanGyle ale = Plans.gyle(1, "ale", 30, start(Plans.none()));
        PlanGyle dry = Plans.gyle(1, "ale", 0, PlanAddition.dose("dry hop", "Fuggle", 1, 0));

        assertTrue(remarks(turned, ale, by(AlphaMethod.HPLC)).get(0).endsWith("for ale with the stated factor 1.080"));
        assertTrue(remarks(PlanRules.NONE, ale, by(AlphaMethod.UNSTATED))
                .get(0)
                .startsWith("alpha figures of unlike methods meet in ale: Fuggle lot A"));
        HarvestPlan unstated = plan(Objective.OLDEST_FIRST, List.of(ale), by(AlphaMethod.UNSTATED));
        assertEquals(2, unstated.lots().get(0).usedKg(), 1e-6); // taken as it is
        assertEquals(List.of(), remarks(PlanRules.NONE, dry, by(AlphaMethod.HPLC)));
        assertThrows(IllegalArgumentException.class, () -> remarks(PlanRules.NONE, ale, by(AlphaMethod.HPLC)));
    }

    @Test
    void lots_that_cannot_bring_what_is_held_are_named_with_what_they_lack() {
        PlanLot alphaless = lot("Z", "Fuggle", 2026, 0, 9, Plans.none());
        PlanLot full = lot("A", "Fuggle", 2026, 0.05, 9, Plans.none());
        PlanLot oily = Plans.of(
                lot("B", "Fuggle", 2026, 0.05, 9, Plans.none()),
                HopForm.LEAF,
                AlphaMethod.LEAD_CONDUCTANCE,
                Plans.some(0.8));

        assertEquals(
                List.of("Fuggle lot Z can't go into start of ale: it has no alpha acid"),
                remarks(PlanRules.NONE, Plans.gyle(1, "ale", 30, start(Plans.none())), alphaless, full));
        assertEquals(
                List.of("Fuggle lot A can't go into dry hop of ale: it has no figure for oil"),
                remarks(
                        PlanRules.NONE,
                        Plans.gyle(1, "ale", 0, PlanAddition.oil("dry hop", "Fuggle", 4, 0)),
                        full,
                        oily));
    }

    @Test
    void gyles_of_one_name_are_refused() {
        PlanGyle ale = Plans.gyle(1, "ale", 30, start(Plans.none()));
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> plan(Objective.OLDEST_FIRST, List.of(ale, ale), by(AlphaMethod.LEAD_CONDUCTANCE)));

        assertTrue(String.valueOf(refused.getMessage())
                .contains("gyle: expected every one once, found two with the id 'G1'"));
    }

    @Test
    void bitterness_that_is_short_is_asked_for_by_what_bitters() {
        // 30 EBU at 200 for a kg of alpha acid; the late dose would bring 300, but holds its dose
        PlanGyle gyle = Plans.gyle(
                1,
                "ale",
                30,
                PlanAddition.bittering("half", "Golding", Plans.none(), HALF),
                PlanAddition.dose("late", "Fuggle", 1, START));
        HarvestPlan plan = plan(Objective.OLDEST_FIRST, List.of(gyle), lot("Z", "Fuggle", 2026, 0, 9, Plans.none()));
        Shortfall shortfall = plan.shortfalls().get(0);

        assertEquals(0.15, shortfall.alphaKg().orElseThrow(), KG);
        assertTrue(shortfall.text().contains("ale, gyle G1 of 2027-01-11: 30.00 EBU short"), shortfall.text());
        HarvestPlan dose = plan(
                Objective.OLDEST_FIRST,
                List.of(Plans.gyle(1, "ale", 0, PlanAddition.dose("dry hop", "Saaz", 2, 0))),
                by(AlphaMethod.LEAD_CONDUCTANCE));
        assertEquals(2, dose.shortfalls().get(0).kg().orElseThrow(), KG);
        HarvestPlan oil = plan(
                Objective.OLDEST_FIRST,
                List.of(Plans.gyle(1, "ale", 0, PlanAddition.oil("dry hop", "Saaz", 12, 0))),
                by(AlphaMethod.LEAD_CONDUCTANCE));
        assertTrue(oil.shortfalls().get(0).kg().isEmpty());
        assertTrue(oil.shortfalls().get(0).text().contains("dry hop: Saaz is 12.0 mL of oil short"));
    }
}
