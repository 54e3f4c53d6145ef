package costrel.scaling;

import static costrel.scaling.Job.LITRES;
import static costrel.scaling.Job.PALE_KG;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import costrel.recipe.Amount;
import costrel.recipe.Holds;
import costrel.recipe.MissingFigureException;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe.ResolvedAddition;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.wort.Gravity;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What goes into a gyle by rate, by weight, by volume, by bitterness, by oil and by cells, each worked out by hand. */
class RatesOfAGyleTest {
    private static final double BY_HAND = 1e-9;

    /** Of the plants of these tests: 3 % left in the FV, then 2 % in the tank. */
    private static final double RACKED_L = LITRES * 0.97 * 0.98;

    /** 1040 by the cubic of the American Society of Brewing Chemists. */
    private static final double PLATO =
            -616.868 + 1111.14 * 1.04 - 630.272 * 1.04 * 1.04 + 135.997 * 1.04 * 1.04 * 1.04;

    private static HopOnTheDay hop(HopForm form, double alpha, OptionalDouble oil) {
        return new HopOnTheDay("lot", "Fuggle", form, alpha, AlphaMethod.HPLC, oil, "certificate");
    }

    private static ResolvedHop hops(HopUse use, Amount amount, Holds holds) {
        return new ResolvedHop(hop(HopForm.T90, 0.05, OptionalDouble.of(0.8)), use, amount, holds);
    }

    private static void assertRefused(String words, Job job) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, job::gyle);
        assertTrue(String.valueOf(refused.getMessage()).contains(words), String.valueOf(refused.getMessage()));
    }

    /** The hectolitres that a rate speaks of: collected, racked, let down, or those of the liquor. */
    private static double hectolitres(Recipe.Into into, Gyle gyle) {
        LiquorPlan liquor = gyle.liquor().orElseThrow();
        return switch (into) {
            case COPPER, FV -> gyle.collectedL() / 100;
            case TANK, CASK, PRIMINGS ->
                gyle.collectedL() * 0.97 * 0.98 / 100
                        - 0.08 * gyle.hops().get(0).kg();
            case LIQUORING_BACK -> gyle.collectedL() * 0.05 / 100;
            case MASH_LIQUOR -> 2.5 * gyle.mashedKg() / 100;
            case SPARGE_LIQUOR -> (liquor.totalL() - 2.5 * gyle.mashedKg()) / 100;
            case ALL_LIQUOR -> liquor.totalL() / 100;
        };
    }

    @Test
    void an_addition_goes_by_the_hectolitres_of_what_it_goes_into() {
        for (Recipe.Into into : Recipe.Into.values()) {
            for (Amount amount : List.of(
                    new Amount.OfRate(40), new Amount.OfVolumeRate(40), new Amount.OfMass(2), new Amount.OfVolume(2))) {
                Job job = new Job();
                job.castShare = 0.95;
                job.hopRetention = 6;
                // in the tank T90 holds 8 L/kg; in the mash hops hold liquor
                job.hops.add(hops(new HopUse.DryHopTank(), new Amount.OfRate(120), Holds.DOSE));
                job.hops.add(hops(new HopUse.Mash(), new Amount.OfMass(5), Holds.DOSE));
                ResolvedAddition addition = new ResolvedAddition("sucrose", into, amount, 386, List.of());
                job.additions.add(addition);
                Gyle gyle = job.gyle();
                Gyle.Weight found = gyle.additions().get(0);
                boolean byVolume = amount instanceof Amount.OfVolume || amount instanceof Amount.OfVolumeRate;
                assertEquals(byVolume, found.byVolume(), into + " " + amount);
                boolean rate = amount instanceof Amount.OfRate || amount instanceof Amount.OfVolumeRate;
                double expected = rate ? 0.040 * hectolitres(into, gyle) : 2;
                assertEquals(expected, found.amount(), 1e-8, into + " " + amount);
                // at twice the length a weight keeps its rate
                job.litres = 2 * LITRES;
                Gyle twice = job.gyle();
                assertEquals(
                        expected * hectolitres(into, twice) / hectolitres(into, gyle),
                        twice.additions().get(0).amount(),
                        1e-8,
                        into + " " + amount);
            }
        }
    }

    @Test
    void an_addition_to_liquor_needs_a_ratio_of_liquor_to_grist() {
        Job job = new Job();
        job.liquorToGrist = OptionalDouble.empty();
        job.additions.add(Job.addition("gypsum", Recipe.Into.MASH_LIQUOR, new Amount.OfRate(40)));
        Gyle gyle = job.gyle();
        assertTrue(gyle.additions().isEmpty());
        assertTrue(Job.says(gyle, Finding.Weight.NOTE, "gypsum for the mash liquor left out"));
        job.additions.set(0, Job.addition("gypsum", Recipe.Into.MASH_LIQUOR, new Amount.OfMass(1)));
        assertRefused("gypsum is given by weight for the mash liquor: expected a liquor:grist ratio", job);
    }

    @Test
    void yeast_is_pitched_by_weight_by_rate_and_by_cells_for_each_degree_plato() {
        Map<Amount, Double> kg = Map.of(
                new Amount.OfMass(6), 6.0,
                new Amount.OfRate(150), 7.5,
                // a million a mL and °P, of 7500 billion cells in a kilogram
                new Amount.OfCells(1e6), 1e6 * 1000 * LITRES * PLATO / 7500e9);
        kg.forEach((amount, expected) -> {
            Job job = new Job();
            job.yeasts.add(Job.yeast(amount, 7500e9));
            assertEquals(expected, job.gyle().yeasts().get(0).amount(), 1e-9 * expected, amount.toString());
            job.litres = 2 * LITRES;
            assertEquals(2 * expected, job.gyle().yeasts().get(0).amount(), 1e-9 * expected, amount.toString());
            Intent stronger = job.intent().withOg(Gravity.ofPlato(2 * PLATO));
            assertEquals(4 * expected, job.gyle(stronger).yeasts().get(0).amount(), 1e-6, "by its °P: " + amount);
        });
    }

    @Test
    void hops_as_stated_by_weight_rate_oil_and_bitterness_are_one() {
        // 100 g/hL of 5000 L are 5 kg; at 0.8 mL/100 g that is 0.8 mL/hL of oil; at 5 % and 30 % it is 15 EBU
        for (Amount amount : List.of(
                new Amount.OfMass(5), new Amount.OfRate(100), new Amount.OfOil(0.8), new Amount.OfBitterness(15))) {
            for (Holds holds : Holds.values()) {
                Job job = new Job();
                job.hops.add(hops(new HopUse.Copper(90), amount, holds));
                Gyle gyle = job.gyle();
                assertEquals(5, gyle.hops().get(0).kg(), BY_HAND, amount + " " + holds);
                assertEquals(100, gyle.hops().get(0).gramsPerHl(), BY_HAND, amount + " " + holds);
                assertEquals(15, gyle.bitterness().ebu(), BY_HAND, amount + " " + holds);
                // half the alpha acid and a quarter of the oil
                Intent poorer = job.intent().withHops(List.of(hop(HopForm.T90, 0.025, OptionalDouble.of(0.2))));
                double kg = holds == Holds.BITTERNESS ? 10 : holds == Holds.OIL ? 20 : 5;
                assertEquals(kg, job.gyle(poorer).hops().get(0).kg(), BY_HAND, amount + " " + holds);
            }
        }
    }

    @Test
    void dry_hops_in_the_cask_go_by_what_is_racked_and_in_the_tank_by_what_is_collected() {
        Job job = new Job();
        job.hops.add(hops(new HopUse.DryHopTank(), new Amount.OfRate(100), Holds.DOSE));
        job.hops.add(hops(new HopUse.DryHopCask(), new Amount.OfRate(100), Holds.DOSE));
        Gyle gyle = job.gyle();
        assertEquals(5, gyle.hops().get(0).kg(), BY_HAND);
        // T90 in the tank holds 8 L/kg
        double rackedL = RACKED_L - 40;
        assertEquals(rackedL, gyle.beer().rackedL(), BY_HAND);
        assertEquals(40, gyle.beer().losses().amount("held by dry hops in the tank"), BY_HAND);
        assertEquals(rackedL / 1000, gyle.hops().get(1).kg(), BY_HAND);
        assertEquals(100, gyle.hops().get(1).gramsPerHl(), BY_HAND);
        assertEquals(0, gyle.bitterness().ebu());
        job.litres = 2 * LITRES;
        assertEquals(2 * rackedL / 1000, job.gyle().hops().get(1).kg(), BY_HAND);
        job.hops.set(1, hops(new HopUse.DryHopCask(), new Amount.OfOil(0.4), Holds.OIL));
        assertEquals(rackedL / 1000, job.gyle().hops().get(1).kg(), BY_HAND, "0.4 mL/hL is 50 g/hL at 0.8 mL/100 g");
    }

    @Test
    void hops_whose_oil_is_wanted_and_not_known_are_refused_by_name() {
        Job job = new Job();
        job.hops.add(new ResolvedHop(
                hop(HopForm.LEAF, 0.05, OptionalDouble.empty()),
                new HopUse.Copper(15),
                new Amount.OfOil(0.8),
                Holds.OIL));
        assertThrows(MissingFigureException.class, job::gyle);
        job.hops.set(
                0,
                new ResolvedHop(
                        hop(HopForm.LEAF, 0, OptionalDouble.of(0)),
                        new HopUse.Copper(15),
                        new Amount.OfOil(0.8),
                        Holds.OIL));
        assertThrows(MissingFigureException.class, job::gyle);
        job.hops.set(
                0,
                new ResolvedHop(
                        hop(HopForm.LEAF, 0, OptionalDouble.of(1)),
                        new HopUse.Copper(15),
                        new Amount.OfBitterness(8),
                        Holds.BITTERNESS));
        assertRefused("expected alpha acid and a utilisation over 0 to bring bitterness, found alpha 0", job);
    }

    @Test
    void two_bitterings_keep_their_proportions_of_bitterness() {
        Job job = new Job();
        // by hand 10⁶ × kg × 5 % × share / 5000: 4 kg at 30 % are 12 EBU, 4 kg at 15 % are 6
        job.hops.add(hops(new HopUse.Copper(90), new Amount.OfMass(4), Holds.BITTERNESS));
        job.hops.add(hops(new HopUse.Copper(15), new Amount.OfMass(4), Holds.BITTERNESS));
        job.ebu = OptionalDouble.of(27);
        assertEquals(6, job.gyle().hops().get(0).kg(), BY_HAND);
        assertEquals(6, job.gyle().hops().get(1).kg(), BY_HAND);
        assertEquals(18, job.gyle().hops().get(0).ebu(), BY_HAND);
    }

    @Test
    void the_correction_of_a_plant_stands_on_every_utilisation() {
        Job job = new Job();
        job.correction = 0.8;
        // 15 EBU at 5 % and 30 % × 0.8
        job.hops.add(hops(new HopUse.Copper(90), new Amount.OfBitterness(15), Holds.BITTERNESS));
        Gyle gyle = job.gyle();
        assertEquals(6.25, gyle.hops().get(0).kg(), BY_HAND);
        assertEquals(0.24, gyle.hops().get(0).utilisation(), BY_HAND);
        assertEquals(15, gyle.bitterness().ebu(), BY_HAND);
    }

    @Test
    void a_copper_sugar_from_the_start_thickens_the_copper_up_and_a_later_one_does_not() {
        Job job = new Job();
        job.grist.add(new ResolvedGrist(Sample.INVERT, new Amount.OfMass(100), OptionalDouble.empty(), false));
        double all = (PALE_KG * 300 * 0.9 + 100 * 320) / LITRES;
        assertEquals(all, job.gyle().og().excessDegrees(), 1e-9);
        assertEquals(all, job.gyle().copperUpDegrees(), 1e-9);
        for (double minutes : new double[] {90, 89.9}) {
            job.grist.set(
                    1, new ResolvedGrist(Sample.INVERT, new Amount.OfMass(100), OptionalDouble.of(minutes), false));
            assertEquals(all, job.gyle().og().excessDegrees(), 1e-9);
            assertEquals(minutes < 90 ? 40 : all, job.gyle().copperUpDegrees(), 1e-9, minutes + " min");
        }
    }

    @Test
    void shares_of_the_grist_at_home_need_an_og() {
        Job job = new Job();
        job.castShare = 0.8;
        job.grist.set(0, new ResolvedGrist(Sample.PALE, new Amount.OfGrist(1), OptionalDouble.empty(), false));
        assertRefused("or an OG with shares of the grist, found shares without an OG", job);
        job.og = Optional.of(Gravity.ofDegrees(40));
        assertEquals(PALE_KG, job.gyle().mashedKg(), 1e-8);
        assertEquals(50, job.gyle().castDegrees(), 1e-9);
    }

    @Test
    void a_stated_og_holds_through_liquoring_back() {
        Job job = new Job();
        job.castShare = 0.8;
        job.og = Optional.of(Gravity.ofDegrees(40));
        Gyle gyle = job.gyle();
        assertEquals(50, gyle.castDegrees(), 1e-9);
        assertEquals(PALE_KG, gyle.mashedKg(), 1e-8);
        assertEquals(0.2 * LITRES, gyle.volume().amount("liquoring back"), 1e-8);
        // colour goes by what is collected: the sum is kg × EBC
        assertEquals(
                costrel.wort.ColourRule.MOREY.of(PALE_KG * 5, LITRES).ebc(),
                gyle.colours().get(0).colour().ebc(),
                BY_HAND);
    }

    @Test
    void weights_that_are_not_rounded_give_the_beer_that_was_wanted() {
        Job job = new Job();
        job.castShare = 0.8;
        job.grist.add(new ResolvedGrist(Sample.INVERT, new Amount.OfMass(40), OptionalDouble.of(20), false));
        job.hops.add(hops(new HopUse.Copper(90), new Amount.OfMass(4), Holds.BITTERNESS));
        job.hops.add(hops(new HopUse.Copper(15), new Amount.OfMass(3), Holds.DOSE));
        Gyle gyle = job.gyle();
        Gyle.Weighed weighed = gyle.weighed().orElseThrow();
        assertEquals(gyle.og().excessDegrees(), weighed.ogDegrees(), 1e-8);
        assertEquals(gyle.bitterness().ebu(), weighed.ebu(), 1e-8);
        assertEquals(gyle.colours().get(0).colour().ebc(), weighed.ebc().orElseThrow(), 1e-8);
    }
}
