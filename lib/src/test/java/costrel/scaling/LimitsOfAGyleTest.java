package costrel.scaling;

import static costrel.scaling.Job.LITRES;
import static costrel.scaling.Job.PALE_KG;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.hops.AlphaMethod;
import costrel.hops.AlphaMethodFactors;
import costrel.hops.HopForm;
import costrel.hops.HopOnTheDay;
import costrel.hops.HopUse;
import costrel.hops.Kinetic;
import costrel.hops.Tinseth;
import costrel.measure.Amounts;
import costrel.plant.MashEfficiency;
import costrel.recipe.Amount;
import costrel.recipe.Holds;
import costrel.wort.Gravity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a gyle tells when a vessel, a hop or a figure is at its limit: not a hair before, and in words with its figures. */
class LimitsOfAGyleTest {
    private static final double HAIR = 1e-6;
    private static final double CLOSE = 1e-9;

    private static OptionalDouble some(double figure) {
        return OptionalDouble.of(figure);
    }

    private static HopOnTheDay hop(String lot, HopForm form, double alpha, AlphaMethod method) {
        return new HopOnTheDay(lot, "Fuggle", form, alpha, method, some(0.8), "certificate");
    }

    private static void assertLimit(Gyle at, Gyle over, String words) {
        assertFalse(
                Job.says(at, Finding.Weight.LIMIT, words.substring(0, 6)),
                at.findings().toString());
        assertFalse(VesselChecks.overfull(at));
        assertTrue(Job.says(over, Finding.Weight.LIMIT, words), over.findings().toString());
        assertTrue(VesselChecks.overfull(over));
        assertTrue(over.limited());
    }

    @Test
    void the_mash_tun_takes_its_greatest_grist_and_no_more() {
        Job job = new Job();
        job.greatestGristKg = some(PALE_KG * (1 + HAIR));
        Gyle at = job.gyle();
        job.greatestGristKg = some(PALE_KG / 1.5);
        // 740.74 kg on 493.83 kg: one and a half, so two gyles
        assertLimit(at, job.gyle(), "grist of 741 kg: the mash tun takes 494 kg | brew shorter, or in 2 gyles");
    }

    @Test
    void the_mash_tun_holds_its_mash_at_the_initial_heat() {
        Job job = new Job();
        // water weighs 0.98055 kg/L at 65 °C and 0.97776 at 70 °C against 0.99820 at 20 °C (CRC Handbook of Chemistry
        // and
        // Physics), so 0.97999 at 66 °C; the grist displaces 0.7 L/kg
        double litres = (2.5 * 0.99820 / 0.97999 + 0.7) * PALE_KG;
        job.tunL = some(litres * 1.0005);
        Gyle at = job.gyle();
        assertEquals(litres, at.liquor().orElseThrow().mashHotL(), 0.0002 * litres);
        job.tunL = some(litres * 0.9995);
        assertLimit(at, job.gyle(), "mash of " + Math.round(litres) + " L: the mash tun holds");
        assertTrue(Job.says(job.gyle(), Finding.Weight.LIMIT, "in 2 gyles"));
        job.initialHeatC = OptionalDouble.empty();
        assertFalse(job.gyle().limited(), "a mash of unknown heat is taken cold");
    }

    @Test
    void the_copper_holds_its_wort_at_the_boil_under_its_headspace() {
        Job job = new Job();
        // 5000 L at 20 °C; water 0.99820 and, at 100 °C, 0.95835 kg/L (CRC Handbook of Chemistry and Physics)
        double hotL = LITRES * 0.99820 / 0.95835;
        job.copperL = some(hotL * 1.0002 / 0.85);
        Gyle at = job.gyle();
        job.copperL = some(hotL * 0.9998 / 0.85);
        assertLimit(at, job.gyle(), "copper up hot of 5208 L: under its headspace the copper holds 5207 L");
    }

    @Test
    void copper_sugars_take_room_in_the_copper_too() {
        Job job = new Job();
        job.grist.add(Sample.malt(Sample.INVERT, 100));
        double hotL = LITRES * 0.99820 / 0.95835;
        job.copperL = some(hotL * 1.0002 / 0.85);
        assertFalse(job.gyle().limited());
        job.copperL = some(hotL * 0.9998 / 0.85);
        assertTrue(job.gyle().limited());
    }

    @Test
    void the_fv_holds_the_brew_length_under_its_headspace_and_says_in_how_many_gyles() {
        Job job = new Job();
        job.fvL = some(LITRES / 0.8);
        Gyle at = job.gyle();
        job.fvL = some(LITRES * (1 - HAIR) / 0.8);
        assertLimit(
                at,
                job.gyle(),
                "brew length of 5000 L: under its headspace the FV holds 5000 L | brew shorter, or in 2");
        job.fvL = some(1250 / 0.8);
        assertTrue(
                Job.says(job.gyle(), Finding.Weight.LIMIT, "in 4 gyles"),
                job.gyle().findings().toString());
        job.fvL = some(1249 / 0.8);
        assertTrue(
                Job.says(job.gyle(), Finding.Weight.LIMIT, "in 5 gyles"),
                job.gyle().findings().toString());
    }

    @Test
    void a_wort_is_split_into_as_few_equal_gyles_as_the_vessels_take() {
        Job job = new Job();
        job.fvL = some(1250 / 0.8);
        Scaler.Split split = Scaler.split(job.intent(), job.plant(), Amounts.ofLitres(LITRES), Scaler.Options.usual());
        assertEquals(4, split.count());
        assertEquals(1250, split.each().collectedL(), CLOSE);
        assertFalse(split.each().limited());
        job.fvL = some(LITRES / 20 / 0.8);
        assertEquals(
                20,
                Scaler.split(job.intent(), job.plant(), Amounts.ofLitres(LITRES), Scaler.Options.usual())
                        .count());
        job.fvL = some(LITRES / 20.5 / 0.8);
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> Scaler.split(job.intent(), job.plant(), Amounts.ofLitres(LITRES), Scaler.Options.usual()));
        assertTrue(String.valueOf(refused.getMessage()).contains("5000 L does not fit plain even in 20 gyles"));
        assertThrows(
                IllegalArgumentException.class,
                () -> Scaler.scale(job.intent(), job.plant(), Amounts.ofLitres(0), Scaler.Options.usual()));
    }

    @Test
    void mash_liquor_that_fills_the_copper_alone_leaves_no_sparge() {
        Job job = new Job();
        Gyle usual = job.gyle();
        double totalL = usual.liquor().orElseThrow().totalL();
        job.liquorToGrist = some(totalL / PALE_KG - HAIR);
        assertFalse(job.gyle().limited(), job.gyle().findings().toString());
        job.liquorToGrist = some((totalL + 100) / PALE_KG);
        Gyle over = job.gyle();
        assertTrue(Job.says(over, Finding.Weight.LIMIT, "the mash liquor alone is 100 L more than the copper needs"));
        assertEquals(-100, over.liquor().orElseThrow().spargeL(), 1e-6);
    }

    @Test
    void a_strike_heat_at_the_boil_is_a_limit_and_one_below_is_a_caution_to_take_care() {
        Job job = new Job();
        double strike = job.gyle().liquor().orElseThrow().strikeC().orElseThrow();
        assertTrue(Job.says(
                job.gyle(),
                Finding.Weight.CAUTION,
                String.format(java.util.Locale.ROOT, "hot liquor at %.1f °C and boiling wort scald", strike)));
        assertFalse(job.gyle().limited());
        // a thick mash, so that its initial heat needs liquor over the boil
        job.liquorToGrist = some(1.0);
        job.initialHeatC = some(80);
        assertTrue(Job.says(job.gyle(), Finding.Weight.LIMIT, "strike heat comes out at"));
        assertTrue(job.gyle().limited());
    }

    @Test
    void what_is_not_stated_is_told_with_what_to_add() {
        Job job = new Job();
        job.initialHeatC = OptionalDouble.empty();
        assertTrue(Job.says(job.gyle(), Finding.Weight.NOTE, "strike heat left out"));
        job.initialHeatC = some(66);
        job.gristC = OptionalDouble.empty();
        assertTrue(Job.says(job.gyle(), Finding.Weight.NOTE, "strike heat left out"));
        assertFalse(Job.says(job.gyle(), Finding.Weight.CAUTION, "scald"));
        job.liquorToGrist = OptionalDouble.empty();
        assertTrue(Job.says(job.gyle(), Finding.Weight.NOTE, "liquor plan left out"));
        assertTrue(job.gyle().liquor().isEmpty());
        job.attenuation = OptionalDouble.empty();
        assertTrue(Job.says(job.gyle(), Finding.Weight.NOTE, "no apparent attenuation or FG is stated"));
        Gyle whole = new Job().gyle();
        assertTrue(
                Job.said(whole, Finding.Weight.NOTE).isEmpty(), whole.findings().toString());
    }

    @Test
    void an_efficiency_fitted_to_other_gravities_is_cautioned_beyond_its_ends() {
        Job job = new Job();
        job.home = false;
        job.grist.set(
                0,
                new costrel.recipe.ResolvedRecipe.ResolvedGrist(
                        Sample.PALE, new Amount.OfGrist(1), OptionalDouble.empty(), false));
        job.efficiency = new MashEfficiency.Linear(0.9, 0.001, 42, 30, 60);
        String words = "mash efficiency was fitted to gyles of 1030 to 1060; this one is cast at 10";
        for (double inside : new double[] {30, 45, 60}) {
            job.og = Optional.of(Gravity.ofDegrees(inside));
            assertFalse(Job.says(job.gyle(), Finding.Weight.CAUTION, words), inside + " degrees");
            // 0.9 at 42 degrees, a thousandth less for each degree more
            assertEquals(0.9 - 0.001 * (inside - 42), job.gyle().mashEfficiency(), CLOSE);
        }
        for (double outside : new double[] {29.9, 60.1}) {
            job.og = Optional.of(Gravity.ofDegrees(outside));
            assertTrue(
                    Job.says(job.gyle(), Finding.Weight.CAUTION, words + outside),
                    job.gyle().findings().toString());
        }
    }

    @Test
    void liquor_added_after_the_boil_is_told_as_its_share() {
        Job job = new Job();
        job.castShare = 0.92;
        assertTrue(Job.says(
                job.gyle(), Finding.Weight.NOTE, "8.0 % of the collected wort is liquor added after the boil"));
        assertEquals(0.08 * LITRES, job.gyle().liquor().orElseThrow().backL(), CLOSE);
    }

    @Test
    void more_alpha_acid_than_dissolves_is_cautioned_where_it_boils() {
        // 250 mg/L of 5000 L is 1.25 kg of alpha acid: 25 kg of hops at 5 %
        Job job = new Job();
        job.hops.add(Sample.addition(Sample.hop("a", 0.05), new HopUse.Copper(15), 25 - HAIR));
        assertFalse(
                Job.says(job.gyle(), Finding.Weight.CAUTION, "of alpha acid"),
                job.gyle().findings().toString());
        job.hops.set(0, Sample.addition(Sample.hop("a", 0.05), new HopUse.Copper(15), 26));
        assertTrue(Job.says(
                job.gyle(),
                Finding.Weight.CAUTION,
                "Fuggle in the copper 15 min brings 260 mg/L of alpha acid; about 250 mg/L dissolves"));
        job.hops.set(0, Sample.addition(Sample.hop("a", 0.05), new HopUse.DryHopTank(), 26));
        assertFalse(Job.says(job.gyle(), Finding.Weight.CAUTION, "of alpha acid"), "dry hops don't boil");
    }

    @Test
    void dry_hops_that_change_the_bitterness_are_cautioned() {
        // 387 g/hL is a pound in a US beer barrel: 453.59237 g in 117.347765 L
        Job job = new Job();
        job.hops.add(Sample.addition(Sample.hop("a", 0.05), new HopUse.DryHopTank(), 387 * LITRES / 1e5 - HAIR));
        assertFalse(Job.says(job.gyle(), Finding.Weight.CAUTION, "dry hops at"));
        job.hops.set(0, Sample.addition(Sample.hop("a", 0.05), new HopUse.DryHopTank(), 400 * LITRES / 1e5));
        assertTrue(Job.says(job.gyle(), Finding.Weight.CAUTION, "dry hops at 400 g/hL: from about 387 g/hL"));
    }

    @Test
    void a_bed_of_leaf_counts_leaf_that_lies_in_the_wort() {
        Job job = new Job();
        job.hops.add(Sample.addition(hop("leaf", HopForm.LEAF, 0.05, AlphaMethod.HPLC), new HopUse.Copper(90), 4));
        job.hops.add(Sample.addition(hop("T90", HopForm.T90, 0.05, AlphaMethod.HPLC), new HopUse.Copper(90), 3));
        job.hops.add(Sample.addition(hop("dry", HopForm.LEAF, 0.05, AlphaMethod.HPLC), new HopUse.DryHopCask(), 2));
        job.leastLeafKg = some(4 - HAIR);
        assertFalse(job.gyle().limited(), job.gyle().findings().toString());
        job.leastLeafKg = some(4.5);
        assertTrue(Job.says(
                job.gyle(), Finding.Weight.LIMIT, "4.0 kg of leaf hops reach the hopback; it needs 4.5 kg for a bed"));
    }

    @Test
    void bitterness_beyond_the_conventions_is_cautioned() {
        Job job = new Job();
        job.hops.add(Sample.addition(Sample.hop("a", 0.05), new HopUse.Copper(90), 4));
        job.ebu = some(60 - HAIR);
        assertFalse(Job.says(job.gyle(), Finding.Weight.CAUTION, "is beyond what the conventions"));
        assertEquals(60, job.gyle().bitterness().ebu(), 1e-5);
        job.ebu = some(64);
        assertTrue(Job.says(job.gyle(), Finding.Weight.CAUTION, "bitterness of 64 EBU is beyond what the conventions"));
    }

    @Test
    void late_hops_that_bring_too_much_and_a_beer_without_bittering_are_limits() {
        Job job = new Job();
        // by hand: 10⁶ × 10 kg × 5 % × 15 % / 5000 L = 15 EBU from the late hops
        job.hops.add(Sample.addition(Sample.hop("late", 0.05), new HopUse.Copper(15), 10));
        job.ebu = some(12);
        assertTrue(Job.says(
                job.gyle(),
                Finding.Weight.LIMIT,
                "bitterness comes out at 15.0 EBU for 12.0 EBU wanted: no addition holds bitterness | let a copper"));
        job.hops.add(Sample.addition(Sample.hop("start", 0.05), new HopUse.Copper(90), 2));
        assertTrue(
                Job.says(
                        job.gyle(),
                        Finding.Weight.LIMIT,
                        "bitterness comes out at 15.0 EBU for 12.0 EBU wanted: the additions that keep their dose bring all of it"));
        assertEquals(0, job.gyle().hops().get(1).kg(), CLOSE);
        job.ebu = some(15);
        assertFalse(job.gyle().limited(), job.gyle().findings().toString());
        job.ebu = some(30);
        // the other 15 EBU: 15 × 5000 / (10⁶ × 5 % × 30 %) = 5 kg
        assertEquals(5, job.gyle().hops().get(1).kg(), CLOSE);
        assertFalse(job.gyle().limited());
    }

    @Test
    void alpha_figures_of_two_methods_meet_by_a_stated_factor_or_with_a_caution() {
        Job job = new Job();
        job.hops.add(new costrel.recipe.ResolvedRecipe.ResolvedHop(
                hop("old", HopForm.LEAF, 0.05, AlphaMethod.LEAD_CONDUCTANCE),
                new HopUse.Copper(90),
                new Amount.OfMass(4),
                Holds.BITTERNESS));
        Intent intent = job.intent();
        assertFalse(Job.says(job.gyle(), Finding.Weight.NOTE, "alpha of"));
        Gyle unstated = job.gyle(intent.withHops(List.of(hop("new", HopForm.LEAF, 0.04, AlphaMethod.UNSTATED))));
        assertTrue(Job.says(
                unstated,
                Finding.Weight.CAUTION,
                "alpha figures of unlike methods meet: new (unstated) in place of old (EBC 7.4), taken as they are"));
        assertEquals(4 * 0.05 / 0.04, unstated.hops().get(0).kg(), CLOSE);
        Intent hplc = intent.withHops(List.of(hop("new", HopForm.LEAF, 0.04, AlphaMethod.HPLC)));
        assertThrows(IllegalArgumentException.class, () -> job.gyle(hplc));
        job.options = new Scaler.Options(
                new AlphaMethodFactors(List.of(new AlphaMethodFactors.Factor(
                        AlphaMethod.HPLC, AlphaMethod.LEAD_CONDUCTANCE, 1.25, "stated by the brewery"))),
                false);
        Gyle factored = job.gyle(hplc);
        // 4 % by HPLC stands for 5 %
        assertEquals(4, factored.hops().get(0).kg(), CLOSE);
        assertTrue(Job.says(
                factored,
                Finding.Weight.NOTE,
                "alpha of new (EBC 7.7) in place of old (EBC 7.4) brought to one method with the stated factor 1.250"));
    }

    @Test
    void a_beer_read_by_one_convention_and_brewed_by_another_is_told_in_both() {
        Job home = new Job();
        home.utilisation = new Tinseth();
        home.hops.add(Sample.addition(Sample.hop("a", 0.05), new HopUse.Copper(90), 4));
        Gyle same = home.gyle();
        assertFalse(Job.says(same, Finding.Weight.CAUTION, "the beer was read by"));
        Job away = new Job();
        Gyle gyle = away.gyle(home.intent());
        // by hand: 10⁶ × kg × 5 % × 30 % / 5000 L here, and by the share of Tinseth's rule there
        assertEquals(3 * gyle.hops().get(0).kg(), gyle.bitterness().ebu(), 1e-6);
        assertEquals(
                same.bitterness().ebu() / 4 * gyle.hops().get(0).kg(),
                gyle.bitterness().byHome().orElseThrow(),
                0.01);
        assertTrue(
                Job.says(gyle, Finding.Weight.CAUTION, "EBU there reads"),
                gyle.findings().toString());
    }

    @Test
    void an_upper_bound_is_a_limit_and_where_it_is_insisted_upon_a_caution() {
        Job job = new Job();
        job.utilisation = new Kinetic(OptionalDouble.empty());
        job.hops.add(Sample.addition(Sample.hop("a", 0.05), new HopUse.Copper(90), 4));
        assertTrue(Job.says(job.gyle(), Finding.Weight.LIMIT, "the bitterness is only an upper bound, about twice"));
        job.options = new Scaler.Options(AlphaMethodFactors.NONE, true);
        assertFalse(job.gyle().limited());
        assertTrue(Job.says(
                job.gyle(), Finding.Weight.CAUTION, "only an upper bound: no recovery has been fitted for plain"));
    }

    @Test
    void a_stated_og_that_the_weights_do_not_bear_out_is_told_with_the_efficiency_it_means() {
        Job job = new Job();
        job.og = Optional.of(Gravity.ofDegrees(40));
        assertFalse(Job.says(job.gyle(), Finding.Weight.NOTE, "together they mean"));
        // 38 degrees from malt that gives 40 at 90 %: 85.5 %
        job.og = Optional.of(Gravity.ofDegrees(38));
        assertTrue(Job.says(
                job.gyle(),
                Finding.Weight.NOTE,
                "together they mean a mash efficiency of 85.5 % on plain, which states 90.0 %"));
        assertEquals(38, job.gyle().og().excessDegrees(), CLOSE);
        job.og = Optional.of(Gravity.ofDegrees(40.2));
        assertFalse(Job.says(job.gyle(), Finding.Weight.NOTE, "together they mean"), "within half a point");
    }
}
