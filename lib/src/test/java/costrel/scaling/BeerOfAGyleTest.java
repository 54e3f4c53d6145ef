package costrel.scaling;

import static costrel.scaling.Job.LITRES;
import static costrel.scaling.Job.PALE_KG;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.AlphaMethod;
import costrel.hops.HopForm;
import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import costrel.recipe.Amount;
import costrel.recipe.GristMaterial;
import costrel.recipe.Holds;
import costrel.recipe.Recipe;
import costrel.recipe.ResolvedRecipe.ResolvedAddition;
import costrel.recipe.ResolvedRecipe.ResolvedHop;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The beer that comes of a gyle: its primings, condition, colour and the story of its figures. */
class BeerOfAGyleTest {
    private static final double BY_HAND = 1e-9;

    private static HopOnTheDay hop(HopForm form, double alpha, OptionalDouble oil) {
        return new HopOnTheDay("lot", "Fuggle", form, alpha, AlphaMethod.HPLC, oil, "certificate");
    }

    private static ResolvedHop hops(HopUse use, Amount amount, Holds holds) {
        return new ResolvedHop(hop(HopForm.T90, 0.05, OptionalDouble.of(0.8)), use, amount, holds);
    }

    @Test
    void primings_add_their_gravity_and_their_gas() {
        Job job = new Job();
        job.condition = OptionalDouble.of(1.5);
        job.heldVolumes = OptionalDouble.of(1.0);
        Gyle plain = job.gyle();
        // half a volume more is one degree at 0.50 volumes a degree (Condition); FG is 40 × (1 − 0.75)
        assertEquals(11, plain.beer().rackingGravity().orElseThrow().excessDegrees(), BY_HAND);
        assertEquals(0, plain.beer().primingDegrees());
        assertFalse(Job.says(plain, Finding.Weight.CAUTION, "primings ferment"));
        job.additions.add(new ResolvedAddition("sugar", Recipe.Into.PRIMINGS, new Amount.OfRate(100), 386, List.of()));
        Gyle primed = job.gyle();
        // 1 g/L at 386 L°/kg
        assertEquals(0.386, primed.beer().primingDegrees(), BY_HAND);
        assertTrue(primed.beer().primingVolumes() > 0.2 && primed.beer().primingVolumes() < 0.3);
        assertEquals(
                11 - 2 * primed.beer().primingVolumes(),
                primed.beer().rackingGravity().orElseThrow().excessDegrees(),
                BY_HAND);
        assertTrue(primed.beer().strength().orElseThrow().percent()
                > plain.beer().strength().orElseThrow().percent());
        assertTrue(Job.says(primed, Finding.Weight.CAUTION, "primings ferment in the closed container"));
        // the same weight into the copper is no priming
        job.additions.set(0, new ResolvedAddition("sugar", Recipe.Into.COPPER, new Amount.OfRate(100), 386, List.of()));
        assertEquals(0, job.gyle().beer().primingDegrees());
        assertEquals(0, job.gyle().beer().primingVolumes());
    }

    @Test
    void a_condition_without_what_the_beer_holds_is_left_out_and_told() {
        Job job = new Job();
        job.condition = OptionalDouble.of(1.5);
        Gyle gyle = job.gyle();
        assertTrue(gyle.beer().rackingGravity().isEmpty());
        assertTrue(Job.says(gyle, Finding.Weight.NOTE, "racking gravity left out"));
        job.warmestC = OptionalDouble.of(18);
        assertFalse(Job.says(job.gyle(), Finding.Weight.NOTE, "racking gravity left out"));
        // common practice: beer that stood open at 18 °C holds a little under a volume
        assertEquals(0.9, job.gyle().beer().heldVolumes().orElseThrow(), 0.05);
    }

    @Test
    void condition_that_glass_may_not_bear_is_warned_of_from_three_volumes_and_refused_from_four() {
        Job job = new Job();
        job.heldVolumes = OptionalDouble.of(1.0);
        job.condition = OptionalDouble.of(2.95);
        assertFalse(Job.says(job.gyle(), Finding.Weight.CAUTION, "volumes in a closed container"));
        job.condition = OptionalDouble.of(3.2);
        assertTrue(
                Job.says(job.gyle(), Finding.Weight.CAUTION, "condition comes to 3.2 volumes in a closed container"));
        assertFalse(job.gyle().limited());
        job.condition = OptionalDouble.of(4.1);
        assertTrue(Job.says(job.gyle(), Finding.Weight.LIMIT, "condition comes to 4.1 volumes in a closed container"));
    }

    @Test
    void colour_is_told_by_the_sum_of_the_grist_and_left_out_where_a_figure_is_missing() {
        Job job = new Job();
        job.grist.add(Sample.malt(Sample.CRYSTAL, 50));
        job.grist.add(Sample.malt(Sample.INVERT, 40));
        Gyle gyle = job.gyle();
        // by the rule, whose own test holds it to its source: the sum is kg × EBC of all lines
        double sum = PALE_KG * 5 + 50 * 150 + 40 * 30;
        assertEquals(
                costrel.wort.ColourRule.MOREY.of(sum, LITRES).ebc(),
                gyle.colours().get(0).colour().ebc(),
                BY_HAND);
        GristMaterial silent = new GristMaterial(
                "wheat",
                GristMaterial.Kind.ADJUNCT,
                OptionalDouble.of(290),
                OptionalDouble.of(0.1),
                OptionalDouble.empty(),
                List.of(),
                "invented");
        job.grist.add(Sample.malt(silent, 10));
        assertTrue(job.gyle().colours().isEmpty());
        assertTrue(Job.says(job.gyle(), Finding.Weight.NOTE, "colour left out: no figure for wheat"));
    }

    @Test
    void the_explanation_carries_the_figures_of_the_gyle() {
        Job job = new Job();
        job.hops.add(hops(new HopUse.Copper(90), new Amount.OfMass(5), Holds.BITTERNESS));
        var explanation = job.gyle().explanation();
        assertEquals("5000.0 L", explanation.figure());
        assertEquals("15.000 EBU", explanation.find("bitterness").orElseThrow().figure());
        assertEquals(
                "15.000 EBU",
                explanation.find("Fuggle in the copper 90 min").orElseThrow().figure());
        assertEquals(
                "5.000 %",
                explanation.find("alpha acid on the day").orElseThrow().figure());
        assertEquals(
                "15.000 EBU as read",
                explanation.find("holds its bitterness").orElseThrow().figure());
        assertEquals(
                "200000.0 L°", explanation.find("extract ledger").orElseThrow().figure());
        assertEquals(
                "740.741 kg", explanation.find("mashed goods").orElseThrow().figure());
        assertEquals(
                "200000.0 L°", explanation.find("pale ale malt").orElseThrow().figure());
        assertTrue(explanation.text().contains("740.741 kg × 300.0 L°/kg × 90.00 %"), explanation.text());
        assertTrue(explanation.text().contains("100.00 g/hL as read, of lot"), explanation.text());
        assertTrue(explanation.text().contains("1000000 × 5.0000 kg × 5.000 % × 30.000 % / 5000.0 L"));
    }
}
