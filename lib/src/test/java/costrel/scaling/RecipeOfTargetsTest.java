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
import costrel.plant.MashEfficiency;
import costrel.recipe.Amount;
import costrel.recipe.Holds;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe.ResolvedGrist;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import costrel.wort.Gravity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A recipe that has no home plant and states what the beer is to be, worked out by hand. */
class RecipeOfTargetsTest {
    private static final double BY_HAND = 1e-9;

    /** Of the plants of these tests: 3 % left in the FV, then 2 % in the tank. */
    private static final double RACKED_L = LITRES * 0.97 * 0.98;

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

    private static Job targets() {
        Job job = new Job();
        job.home = false;
        job.og = Optional.of(Gravity.ofDegrees(40));
        job.grist.set(0, new ResolvedGrist(Sample.PALE, new Amount.OfGrist(0.8), OptionalDouble.empty(), false));
        job.grist.add(new ResolvedGrist(Sample.INVERT, new Amount.OfGrist(0.2), OptionalDouble.of(20), false));
        return job;
    }

    @Test
    void shares_of_the_grist_count_copper_sugars_in() {
        // kg × (0.8 × 300 × 0.9 + 0.2 × 320) = 5000 × 40
        double kg = LITRES * 40 / (0.8 * 300 * 0.9 + 0.2 * 320);
        Gyle gyle = targets().gyle();
        assertEquals(0.8 * kg, gyle.grist().get(0).kg(), 1e-8);
        assertEquals(0.2 * kg, gyle.grist().get(1).kg(), 1e-8);
        assertEquals(0.2 * kg * 320 / (LITRES * 40), gyle.grist().get(1).share(), BY_HAND);
        assertEquals(OptionalDouble.of(20), gyle.grist().get(1).minutesBeforeCast());
        assertEquals(LITRES * 40 / (kg * (0.8 * 300 + 0.2 * 320)), gyle.extractEfficiency(), BY_HAND);
    }

    @Test
    void weights_of_the_grist_are_proportions_where_there_is_no_home() {
        Job job = targets();
        job.grist.set(0, Sample.malt(Sample.PALE, 400));
        job.grist.set(1, Sample.malt(Sample.INVERT, 100));
        assertEquals(
                targets().gyle().grist().get(0).kg(), job.gyle().grist().get(0).kg(), 1e-8);
        assertEquals(
                targets().gyle().grist().get(1).kg(), job.gyle().grist().get(1).kg(), 1e-8);
        job.grist.set(1, new ResolvedGrist(Sample.INVERT, new Amount.OfGrist(0.2), OptionalDouble.empty(), false));
        assertRefused("all as shares of the grist, found some of each", job);
        job.grist.set(0, new ResolvedGrist(Sample.PALE, new Amount.OfGrist(0.79), OptionalDouble.empty(), false));
        assertRefused("expected shares of the grist that add up to 100 %, found 99.0 %", job);
        job.og = Optional.empty();
        assertRefused("expected an OG, or a home plant to read it on", job);
    }

    @Test
    void hops_of_a_recipe_without_home_go_by_rate_oil_bitterness_or_weight_with_its_length() {
        for (Amount amount : List.of(
                new Amount.OfMass(5), new Amount.OfRate(100), new Amount.OfOil(0.8), new Amount.OfBitterness(15))) {
            Job job = targets();
            boolean bitterness = amount instanceof Amount.OfBitterness;
            job.hops.add(hops(new HopUse.Copper(90), amount, bitterness ? Holds.BITTERNESS : Holds.DOSE));
            job.ebu = bitterness ? OptionalDouble.empty() : OptionalDouble.of(15);
            Gyle gyle = job.gyle();
            assertEquals(5, gyle.hops().get(0).kg(), BY_HAND, amount.toString());
            assertEquals(15, gyle.bitterness().ebu(), BY_HAND, amount.toString());
            job.litres = 3 * LITRES;
            assertEquals(15, job.gyle().hops().get(0).kg(), BY_HAND, amount.toString());
            job.statedLitres = OptionalDouble.empty();
            if (amount instanceof Amount.OfMass) {
                assertRefused("Fuggle is given by mass: expected a brew length as well", job);
            } else {
                assertEquals(15, job.gyle().hops().get(0).kg(), BY_HAND, amount.toString());
            }
        }
    }

    @Test
    void bitterings_by_rate_share_a_stated_bitterness_as_they_would_bring_it() {
        Job job = targets();
        job.correction = 0.8;
        // 100 g/hL of 5 % at 30 % and at 15 % bring two to one
        job.hops.add(hops(new HopUse.Copper(90), new Amount.OfRate(100), Holds.BITTERNESS));
        job.hops.add(hops(new HopUse.Copper(15), new Amount.OfRate(100), Holds.BITTERNESS));
        job.ebu = OptionalDouble.of(36);
        Gyle gyle = job.gyle();
        assertEquals(24, gyle.hops().get(0).ebu(), BY_HAND);
        assertEquals(12, gyle.hops().get(1).ebu(), BY_HAND);
        assertEquals(10, gyle.hops().get(0).kg(), BY_HAND);
        // and with one that is stated in EBU: 10 × 1 g/L × 5 % × 15 % × 0.8 is 6 EBU against 18
        job.hops.set(0, hops(new HopUse.Copper(90), new Amount.OfBitterness(18), Holds.BITTERNESS));
        assertEquals(27, job.gyle().hops().get(0).ebu(), 1e-6 * 27);
    }

    @Test
    void a_dose_stated_in_bitterness_is_weighed_for_it() {
        Job job = targets();
        job.hops.add(hops(new HopUse.Copper(90), new Amount.OfBitterness(20), Holds.BITTERNESS));
        job.hops.add(hops(new HopUse.Copper(15), new Amount.OfBitterness(6), Holds.DOSE));
        // 6 EBU × 5000 L / (10⁶ × 5 % × 15 %)
        assertEquals(4, job.gyle().hops().get(1).kg(), BY_HAND);
        assertEquals(20, job.gyle().hops().get(0).ebu(), BY_HAND);
    }

    @Test
    void oil_is_held_where_it_follows_from_the_weight() {
        Job job = targets();
        job.ebu = OptionalDouble.of(15);
        job.hops.add(hops(new HopUse.Copper(90), new Amount.OfRate(100), Holds.OIL));
        Intent intent = job.intent();
        assertEquals(0.8, intent.hops().get(0).oilMlPerHl().orElseThrow(), BY_HAND);
        Gyle poorer = job.gyle(intent.withHops(List.of(hop(HopForm.T90, 0.05, OptionalDouble.of(0.4)))));
        assertEquals(10, poorer.hops().get(0).kg(), BY_HAND);
    }

    @Test
    void the_bitterness_is_the_sum_of_its_additions_and_dry_hops_are_silent() {
        Job job = targets();
        job.hops.add(hops(new HopUse.Copper(90), new Amount.OfBitterness(20), Holds.BITTERNESS));
        job.hops.add(hops(new HopUse.Copper(15), new Amount.OfBitterness(5), Holds.BITTERNESS));
        job.hops.add(hops(new HopUse.DryHopTank(), new Amount.OfRate(50), Holds.DOSE));
        Gyle gyle = job.gyle();
        assertEquals(25, gyle.intent().ebu(), BY_HAND);
        assertEquals(20, gyle.hops().get(0).ebu(), BY_HAND);
        assertEquals(5, gyle.hops().get(1).ebu(), BY_HAND);
        job.hops.add(hops(new HopUse.Copper(10), new Amount.OfRate(50), Holds.DOSE));
        assertRefused("expected its bitterness in EBU, every addition in EBU, or a home plant", job);
    }

    @Test
    void without_a_home_yeast_by_weight_needs_the_length_and_additions_need_a_rate() {
        Job job = targets();
        job.yeasts.add(Job.yeast(new Amount.OfMass(6), 7500e9));
        job.additions.add(Job.addition("finings", Recipe.Into.CASK, new Amount.OfVolumeRate(500)));
        Gyle gyle = job.gyle();
        assertEquals(6, gyle.yeasts().get(0).amount(), BY_HAND);
        assertEquals(RACKED_L / 100 * 0.5, gyle.additions().get(0).amount(), BY_HAND);
        assertTrue(gyle.additions().get(0).byVolume());
        job.statedLitres = OptionalDouble.empty();
        assertRefused("yeast is given by mass: expected a brew length as well", job);
        job.yeasts.clear();
        job.additions.set(0, Job.addition("finings", Recipe.Into.CASK, new Amount.OfVolume(5)));
        assertRefused("finings for the cask: expected a rate such as 30 g/hL", job);
    }

    @Test
    void what_is_there_for_colour_keeps_its_weight_a_hectolitre_where_the_recipe_holds_colour() {
        Job job = new Job();
        job.hold = Recipe.GristHold.COLOUR;
        job.castShare = 0.8;
        job.grist.add(new ResolvedGrist(Sample.CRYSTAL, new Amount.OfMass(50), OptionalDouble.empty(), true));
        job.grist.add(new ResolvedGrist(Sample.INVERT, new Amount.OfMass(40), OptionalDouble.empty(), true));
        Intent intent = job.intent();
        job.efficiency = new MashEfficiency.Constant(0.6);
        job.litres = 2 * LITRES;
        Gyle gyle = job.gyle(intent);
        assertEquals(100, gyle.grist().get(1).kg(), 1e-8);
        assertEquals(80, gyle.grist().get(2).kg(), 1e-8);
        // pale malt brings what is left: 0.9 × (740.74 × 300 + 50 × 265) at home, twice, less 0.6 × 100 × 265
        assertEquals(
                (2 * 0.9 * (PALE_KG * 300 + 50 * 265) - 0.6 * 100 * 265) / (0.6 * 300),
                gyle.grist().get(0).kg(),
                1e-7);
        job.hold = Recipe.GristHold.EXTRACT;
        job.efficiency = new MashEfficiency.Constant(0.9);
        Intent byExtract = job.intent();
        job.efficiency = new MashEfficiency.Constant(0.6);
        assertEquals(150, job.gyle(byExtract).grist().get(1).kg(), 1e-8, "in proportion to the efficiency");
    }
}
