package costrel.harvest;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Packs, weighing out, what a plan remarks and its tree, each worked on paper; and figures at the limits that are stated. */
class PlanByHandTest {
    private static final double KG = 1e-9;

    private static PlanLot lot(double stockKg, OptionalDouble packKg) {
        return Plans.lot("A", "Fuggle", 2026, 0.05, stockKg, packKg, Plans.some(10));
    }

    private static void assertOpened(double forKg, int whole, boolean odd, double openedKg) {
        Packs packs = Packs.of(lot(27, Plans.some(5)));
        assertEquals(new Packs.Opened(whole, odd), packs.fewestFor(forKg), "for " + forKg + " kg");
        assertEquals(openedKg, packs.kgOf(packs.fewestFor(forKg)), KG);
    }

    /** 27 kg in packs of 5 kg: five whole and one of 2 kg. */
    @Test
    void packs_are_opened_so_that_the_least_is_left_over() {
        assertOpened(0, 0, false, 0);
        assertOpened(1, 0, true, 2);
        assertOpened(2, 0, true, 2);
        assertOpened(2.5, 1, false, 5);
        assertOpened(5, 1, false, 5);
        assertOpened(5 + 1e-10, 1, false, 5);
        assertOpened(5.1, 1, true, 7);
        assertOpened(7, 1, true, 7);
        assertOpened(7.1, 2, false, 10);
        assertOpened(25, 5, false, 25);
        assertOpened(26, 5, true, 27);
        assertOpened(27, 5, true, 27);
    }

    @Test
    void a_lot_is_whole_packs_and_what_is_left_of_one() {
        assertEquals(new Packs(5, 5, 0), Packs.of(lot(25, Plans.some(5))));
        assertEquals(new Packs(0.1, 3, 0), Packs.of(lot(0.3, Plans.some(0.1)))); // 0.3 / 0.1 is a hair under 3
        Packs opened = Packs.of(lot(27, Plans.some(5)));
        assertEquals(5, opened.whole());
        assertEquals(2, opened.oddKg(), KG);
        assertEquals(new Packs(30, 0, 27), Packs.of(lot(27, Plans.some(30))));
    }

    private static HarvestPlan weighed(double stepKg, double stockKg, double... dosesKg) {
        PlanGyle[] gyles = new PlanGyle[dosesKg.length];
        for (int g = 0; g < gyles.length; g++) {
            gyles[g] = Plans.gyle(g + 1, "ale", 0, PlanAddition.dose("dry hop", "Fuggle", dosesKg[g], 0));
        }
        return HarvestPlanner.plan(
                List.of(gyles),
                List.of(lot(stockKg, Plans.none())),
                new PlanRules(1, Double.POSITIVE_INFINITY, 1, stepKg, AlphaMethodFactors.NONE),
                Objective.LEAST_COST);
    }

    private static void assertWeighed(HarvestPlan plan, double... kg) {
        double[] found = plan.allocations().stream()
                .mapToDouble(each -> each.weighedKg())
                .toArray();
        assertArrayEquals(kg, found, KG);
    }

    @Test
    void the_weight_that_was_rounded_up_most_is_lowered_first() {
        assertWeighed(weighed(0.1, 2.53, 1.27, 1.26), 1.3, 1.2);
        assertWeighed(weighed(0.1, 2.53, 1.26, 1.27), 1.2, 1.3);
        assertWeighed(weighed(0.1, 3.81, 1.27, 1.26, 1.28), 1.3, 1.2, 1.3);
        assertWeighed(weighed(0.1, 3.8, 1.27, 1.27, 1.26), 1.3, 1.3, 1.2);
        assertWeighed(weighed(0.1, 3.75, 1.24, 1.25, 1.26), 1.2, 1.2, 1.3);
        assertWeighed(weighed(0.1, 9, 1.27, 1.24), 1.3, 1.2);
        assertWeighed(weighed(0, 2.53, 1.27, 1.26), 1.27, 1.26);
    }

    @Test
    void lowered_weights_are_counted_and_none_is_where_the_lot_suffices() {
        assertTrue(weighed(0.1, 2.53, 1.27, 1.26)
                .remarks()
                .contains("Fuggle lot A: 1 weight rounded down, or the lot would not suffice"));
        assertEquals(List.of(), weighed(0.1, 9, 1.27, 1.26).remarks());
        assertEquals(List.of(), weighed(0, 2.53, 1.27, 1.26).remarks());
    }

    private static PlanAddition start() {
        return PlanAddition.bittering("start", "Fuggle", Plans.none(), Plans.ebuPerKgAlpha(0.3));
    }

    private static HarvestPlan bitters(double stepKg, double alpha, PlanGyle... gyles) {
        return HarvestPlanner.plan(
                List.of(gyles),
                List.of(Plans.lot("A", "Fuggle", alpha, 99, 10)),
                new PlanRules(1, Double.POSITIVE_INFINITY, 1, stepKg, AlphaMethodFactors.NONE),
                Objective.LEAST_COST);
    }

    @Test
    void gyles_that_the_scales_take_out_of_their_tolerance_are_named() {
        // 30 EBU at 300 EBU for a kg of alpha acid: 0.1 / 0.048 = 2.0833 kg, weighed 2.1: 2.1 × 0.048 × 300 = 30.24
        assertEquals(
                List.of("as weighed out, 1 of 2 gyles leave the tolerance of their bitterness: G1 (30.24 for 30.00)"
                        + "; weigh hops in smaller steps, or narrow the tolerance by what a step brings"),
                bitters(0.1, 0.048, Plans.gyle(1, "ale", 30, start()), Plans.gyle(2, "ale", 28.8, start()))
                        .remarks());
        // 28.8 EBU are 2 kg
        assertEquals(
                List.of(),
                bitters(0.1, 0.048, Plans.gyle(1, "ale", 28.8, start())).remarks());
        // 29.5 EBU are 2.0486 kg, weighed 2.05: 29.52
        assertFalse(bitters(0.01, 0.048, Plans.gyle(1, "ale", 30, 0.5, 0, start()))
                .remarks()
                .toString()
                .contains("as weighed out"));
        assertTrue(bitters(0.1, 0.048, Plans.gyle(1, "ale", 30, 0.5, 0, start()))
                .remarks()
                .toString()
                .contains("G1 (28.80 for 30.00)"));
    }

    @Test
    void gyles_at_the_low_end_of_their_tolerance_are_counted() {
        // a dose of 2 kg at 5 % brings 30 EBU, whatever is cheapest
        PlanAddition late = PlanAddition.dose("late", "Fuggle", 2, Plans.ebuPerKgAlpha(0.3));
        assertEquals(
                List.of(
                        "least cost takes 1 of 3 gyles to the low end of their bitterness; a narrower tolerance holds them"
                                + " nearer to it"),
                bitters(
                                0,
                                0.05,
                                Plans.gyle(1, "ale", 30, 0.5, 0, start()),
                                Plans.gyle(2, "ale", 30, 1, 0, late),
                                Plans.gyle(3, "ale", 30, start()))
                        .remarks());
        assertEquals(
                List.of(),
                bitters(0, 0.05, Plans.gyle(2, "ale", 30, 1, 0, late)).remarks());
    }

    @Test
    void the_tree_of_a_plan_has_each_figure_in_its_own_gyle() {
        // 30 EBU and 45 EBU are 2 and 3 kg at 5 %: 5 of the 6 kg of a pack; lot B costs more and stays whole
        PlanAddition dry = PlanAddition.dose("dry hop", "Goldings", 0.5, 0);
        HarvestPlan plan = HarvestPlanner.plan(
                List.of(Plans.gyle(1, "ale", 30, start(), dry), Plans.gyle(2, "stout", 45, start())),
                List.of(
                        Plans.lot("A", "Fuggle", 2026, 0.05, 60, Plans.some(6), Plans.some(10)),
                        Plans.lot("B", "Fuggle", 2026, 0.05, 60, Plans.none(), Plans.some(90)),
                        Plans.of(
                                Plans.lot("C", "Goldings", 0.04, 0.5, 10),
                                HopForm.LEAF,
                                AlphaMethod.LEAD_CONDUCTANCE,
                                Plans.some(0.8))),
                PlanRules.NONE,
                Objective.LEAST_COST);
        String text = plan.explanation().text();

        assertEquals(1, count(text, "dry hop"), text);
        assertEquals(2, count(text, "start"), text);
        assertEquals(3, count(text, " of the addition; weigh out"), text);
        assertTrue(text.contains("Fuggle lot A, used") && text.contains("1.00 kg of opened packs left over"), text);
        assertFalse(text.contains("lot B"), text);
        assertEquals(1, count(text, "left over"), text);
        assertTrue(text.contains("hop oil") && text.contains("4.00 mL"), text); // 0.5 kg at 0.8 mL/100 g
        assertEquals(3, count(text, "  cost: "), text); // 20, 30 and 5
        assertTrue(text.contains("20.00") && text.contains("30.00") && text.contains("5.00"), text);
        assertTrue(text.contains("used up on " + Plans.NEW_YEAR.plusWeeks(1)), text);
    }

    private static int count(String text, String words) {
        return text.split(Pattern.quote(words), -1).length - 1;
    }

    private static void refused(String words, Executable attempt) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, attempt);
        assertTrue(String.valueOf(refused.getMessage()).contains(words), String.valueOf(refused.getMessage()));
    }

    private static PlanLot lot(int cropYear, double alpha, OptionalDouble oil) {
        return new PlanLot(
                "A",
                "Fuggle",
                HopForm.LEAF,
                cropYear,
                Plans.NEW_YEAR,
                AlphaMethod.LEAD_CONDUCTANCE,
                Map.of("G1", alpha),
                oil,
                1,
                Plans.none(),
                Plans.none());
    }

    @Test
    void a_lot_has_a_crop_year_and_figures_of_hops() {
        assertEquals(1900, lot(1900, 0, Plans.some(0)).cropYear());
        assertEquals(2200, lot(2200, 0.999, Plans.none()).cropYear());
        refused("expected a crop year such as 2026, found 1899", () -> lot(1899, 0.05, Plans.none()));
        refused("expected a crop year such as 2026, found 2201", () -> lot(2201, 0.05, Plans.none()));
        refused("alpha acid of lot A: expected 0 % to under 100 %, found 100 %", () -> lot(2026, 1, Plans.none()));
        refused("alpha acid of lot A: expected 0 % to under 100 %, found 110 %", () -> lot(2026, 1.1, Plans.none()));
        refused("oil of lot A: expected 0 mL/100 g or more, found -1", () -> lot(2026, 0.05, Plans.some(-1)));
        assertEquals("Fuggle lot A", lot(2026, 0.05, Plans.none()).words());
        assertEquals(
                "ale, gyle G1 of " + Plans.NEW_YEAR.plusWeeks(1),
                Plans.gyle(1, "ale", 30, start()).words());
    }

    @Test
    void what_went_in_last_year_has_figures_of_hops_too() {
        refused("alpha acid of 25-1: expected 0 %", () -> last(Plans.some(1), Plans.none()));
        refused("oil of 25-1: expected 0 mL/100 g or more", () -> last(Plans.none(), Plans.some(-0.1)));
        assertEquals(0.05, last(Plans.some(0.05), Plans.some(0)).alpha().orElseThrow());
        refused("dose of oil of dry: expected 0 mL or more", () -> PlanAddition.oil("dry", "Fuggle", -1, 0));
        assertFalse(PlanAddition.oil("dry", "Fuggle", 4, 0).inTheCopper());
        assertTrue(PlanAddition.oil("late", "Fuggle", 4, 80).inTheCopper());
    }

    private static PlanAddition.LastYear last(OptionalDouble alpha, OptionalDouble oil) {
        return new PlanAddition.LastYear("25-1", 2, alpha, oil);
    }

    @Test
    void rules_and_crop_years_are_held_to_their_limits() {
        refused("expected more than 0 mg/L, found 0 mg/L", () -> new PlanRules(1, 0, 1, 0, AlphaMethodFactors.NONE));
        refused("found 101 %", () -> new PlanRules(1, 250, 1.01, 0, AlphaMethodFactors.NONE));
        refused("at most 100 %, found 110 %", () -> new PlanRules(1.1, 250, 1, 0, AlphaMethodFactors.NONE));
        refused("more than 0 %", () -> new PlanRules(0, 250, 1, 0, AlphaMethodFactors.NONE));
        assertEquals(1, new CropYearAlpha("Fuggle", 1, 0.04, 0.04, 0.04, "invented").years());
        refused("expected 1 crop year or more, found 0", () -> crops(0, 0.03, 0.05));
        refused("expected low, mean and high in rising order", () -> crops(3, 0, 0.05));
        refused("expected low, mean and high in rising order", () -> crops(3, 0.03, 1));
        refused("expected low, mean and high in rising order", () -> crops(3, 0.045, 0.05));
        refused("expected low, mean and high in rising order", () -> crops(3, 0.03, 0.035));
    }

    private static CropYearAlpha crops(int years, double low, double high) {
        return new CropYearAlpha("Fuggle", years, low, 0.04, high, "invented");
    }

    @Test
    void a_correction_says_whether_one_is_needed() {
        assertTrue(correction(1, 1.2).text().contains("don't show that a correction is needed"));
        assertTrue(correction(0.9, 1.1).text().contains("don't show that a correction is needed"));
        assertFalse(correction(1.01, 1.2).text().contains("don't show"));
        assertFalse(new HopCorrection(0.9, 0.8, 0.99, 3, 1).text().contains("don't show"));
        assertTrue(new HopCorrection(0.9, 0.8, 1, 3, 1).text().contains("don't show"));
        assertEquals(1.1, new HopCorrection(1.1, 1.1, 1.1, 2, 0).low());
        assertEquals(1000, new HopCorrection.Gyle(1000, 1000).calculatedEbu());
        refused("at most 1000 EBU, found 1000.1 EBU", () -> new HopCorrection.Gyle(1000, 1000.1));
        refused("more than 0 EBU", () -> new HopCorrection.Gyle(0, 30));
    }

    private static HopCorrection correction(double low, double high) {
        return new HopCorrection(1.05, low, high, 3, 1);
    }

    /** Murphy & Son, Hop Requirements: 9 to 35 g/hL, up to 140 met with. */
    @Test
    void dry_hops_at_the_ends_of_the_usual_rates_are_usual() {
        assertFalse(notes(9).contains("the usual 9 to 35") || notes(35).contains("the usual 9 to 35"));
        assertTrue(notes(8.9).contains("8.9 g/hL is under the usual 9 to 35"), notes(8.9));
        assertTrue(notes(35.1).contains("35.1 g/hL is over the usual 9 to 35"), notes(35.1));
        assertTrue(notes(140).contains(", though up to 140 g/hL"), notes(140));
        assertTrue(notes(140.1).contains(", and over the 140 g/hL"), notes(140.1));
        for (double celsius : List.of(-10.0, 40.0)) {
            assertFalse(DryHopNotes.of(HopForm.LEAF, 20, Plans.some(celsius), Plans.none())
                    .isEmpty());
        }
        refused("expected -10 to 40 °C", () -> DryHopNotes.of(HopForm.LEAF, 20, Plans.some(40.1), Plans.none()));
        refused("expected -10 to 40 °C", () -> DryHopNotes.of(HopForm.LEAF, 20, Plans.some(-10.1), Plans.none()));
    }

    private static String notes(double gramsPerHl) {
        return String.join("\n", DryHopNotes.of(HopForm.LEAF, gramsPerHl, Plans.none(), Plans.none()));
    }

    @Test
    void figures_are_printed_plainly() {
        assertEquals("0.1", Figures.plain(0.1));
        assertEquals("1200", Figures.plain(1.2e3));
        assertEquals("NaN", Figures.plain(Double.NaN));
        assertEquals("Infinity", Figures.fixed(Double.POSITIVE_INFINITY, 2));
        assertEquals("0.10 kg", Figures.kg(0.1));
        assertEquals("0.0999 kg", Figures.kg(0.0999));
        assertEquals("4.25 %", Figures.percent(0.0425));
        assertEquals(3, Figures.positive("figure", 3, ""));
        assertEquals(0.7, Figures.shareOverZero("share", 0.7));
        assertEquals("Fuggle", Figures.named("variety", "Fuggle"));
        assertEquals(0, Double.compare(0.0, Figures.notNegative("figure", -0.0, "")));
        assertEquals(0, Double.compare(0.0, Figures.shareUnderOne("share", -0.0)));
        refused("figure: expected more than 0, found 0", () -> Figures.positive("figure", 0, ""));
        refused("share: expected more than 0 % and at most 100 %, found 0 %", () -> Figures.shareOverZero("share", 0));
    }
}
