package costrel.hops;

import static costrel.ReferenceTable.number;
import static costrel.hops.HopCases.between;
import static costrel.hops.HopCases.cases;
import static costrel.hops.HopCases.refused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import costrel.hops.AlphaBalance.Parcel;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AlphaBalanceTest {
    private static final double SIX_PLACES = 0.5e-6 + 1e-12;

    /** Relative, for what conservation of mass alone must give. */
    private static final double IDENTITY = 1e-12;

    private static final double OUNCE_KG = 0.028349523125;
    private static final double POUND_KG = 0.45359237;
    private static final double US_GALLON_L = 3.785411784;
    private static final double US_BEER_BARREL_L = 31 * US_GALLON_L;
    private static final double UK_BARREL_L = 36 * 4.54609;

    @Test
    void the_worked_examples_of_alpha_arithmetic_come_out() {
        int done = 0;
        for (Map<String, String> row : ReferenceTable.read("hops/alpha_arithmetic.csv")) {
            Map<String, Double> given = given(row.getOrDefault("inputs", ""));
            assertEquals(number(row, "value"), worked(row.getOrDefault("kind", ""), given), SIX_PLACES, row.toString());
            done++;
        }
        assertEquals(8, done);
    }

    @Test
    void the_handbook_example_in_american_units_comes_to_31() {
        // J. Palmer, How to Brew, 1st ed., ch. 5.5: 1.5 oz of 6.4 % for 60 min and 1 oz of 4.6 % for 15 min in 5
        // gallons at 1.080
        // are 25 and 6. Erratum: it rounds the factor 74.8915 to 75, so its sums 25.344 and 6.003 are 0.145 % high.
        double litres = 5 * US_GALLON_L;
        double bittering = AlphaBalance.ebu(1.5 * OUNCE_KG, 0.064, 0.176, litres);
        double late = AlphaBalance.ebu(1.0 * OUNCE_KG, 0.046, 0.087, litres);
        assertEquals(25.344 * 74.8915 / 75, bittering, 1e-4);
        assertEquals(6.003 * 74.8915 / 75, late, 1e-4);
        assertEquals(25, Math.round(bittering));
        assertEquals(6, Math.round(late));
        double unrounded = AlphaBalance.ebu(1.5 * OUNCE_KG, 0.064, Tinseth.utilisation(1.080, 60), litres)
                + AlphaBalance.ebu(OUNCE_KG, 0.046, Tinseth.utilisation(1.080, 15), litres);
        assertEquals(31, Math.round(unrounded));
    }

    @Test
    void a_pound_to_the_barrel_comes_out_in_British_units() {
        // Weights and Measures Act 1985: 1 brl = 163.65924 L, 1 lb = 453.59237 g; 1 lb/brl of 5 % at 30 % is 41.573489
        // EBU.
        assertEquals(41.573489, AlphaBalance.ebu(POUND_KG, 0.05, 0.30, UK_BARREL_L), SIX_PLACES);
    }

    @Test
    void a_published_utilisation_leads_to_its_published_bitterness() {
        // Brew Your Own, Scaling up recipes: utilisation from 20 L, 36 IBU, 30 g and 8 % is 30 %.
        assertEquals(36, AlphaBalance.ebu(0.030, 0.08, 0.30, 20), 1e-9);
        assertEquals(0.030, AlphaBalance.massKg(36, 0.08, 0.30, 20), 1e-12);
    }

    @Test
    void crop_years_move_the_weight_as_the_published_alphas_say() {
        for (Map<String, String> row : ReferenceTable.read("hops/crop_years.csv")) {
            double mean = number(row, "mean") / 100;
            assertEquals(
                    number(row, "factor at least"),
                    AlphaBalance.massOfNewLotKg(1, mean, number(row, "least") / 100),
                    0.00006,
                    row.toString());
            assertEquals(
                    number(row, "factor at most"),
                    AlphaBalance.massOfNewLotKg(1, mean, number(row, "most") / 100),
                    0.00006,
                    row.toString());
        }
    }

    @Test
    void halving_the_alpha_doubles_the_bittering_hops() {
        assertEquals(10, AlphaBalance.massOfNewLotKg(5, 0.08, 0.04), IDENTITY * 10);
    }

    @Test
    void a_new_lot_brings_the_bitterness_of_the_old_and_leads_back() {
        cases(1000, random -> {
            double massKg = between(random, 0.01, 100);
            double alphaOld = between(random, 0.02, 0.20);
            double alphaNew = between(random, 0.02, 0.20);
            double newKg = AlphaBalance.massOfNewLotKg(massKg, alphaOld, alphaNew);
            double before = AlphaBalance.ebu(massKg, alphaOld, 0.3, 5000);
            assertEquals(1, AlphaBalance.ebu(newKg, alphaNew, 0.3, 5000) / before, IDENTITY);
            assertEquals(1, AlphaBalance.massOfNewLotKg(newKg, alphaNew, alphaOld) / massKg, IDENTITY);
            assertEquals(1, AlphaBalance.massKg(before, alphaOld, 0.3, 5000) / massKg, IDENTITY);
        });
    }

    @Test
    void a_blend_at_the_lever_share_has_the_wanted_alpha() {
        cases(1000, random -> {
            double a = between(random, 0.02, 0.20);
            double b = between(random, 0.02, 0.20);
            double share = random.nextDouble();
            double blend = AlphaBalance.blendAlpha(List.of(new Parcel(40 * share, a), new Parcel(40 * (1 - share), b)));
            assertEquals(share * a + (1 - share) * b, blend, IDENTITY);
            assertEquals(blend, b + AlphaBalance.shareOfLot(a, b, clamped(blend, a, b)) * (a - b), IDENTITY);
        });
    }

    @Test
    void oil_doses_and_hop_rates_lead_to_one_another() {
        cases(200, random -> {
            double oil = between(random, 0.3, 3.5);
            double rate = between(random, 1, 500);
            double dose = AlphaBalance.oilMlPerHl(rate, oil);
            assertEquals(1, AlphaBalance.rateForOilGPerHl(dose, oil) / rate, IDENTITY);
        });
        assertEquals(0, AlphaBalance.oilMlPerHl(100, 0));
    }

    @Test
    void a_usual_bittering_dissolves() {
        // 28 EBU at a utilisation of 25 % are 112 mg/L of alpha acid, well under 250 mg/L.
        double massKg = AlphaBalance.massKg(28, 0.05, 0.25, 1000);
        assertEquals(112, AlphaBalance.alphaMgPerL(massKg, 0.05, 1000), 1e-9);
        assertTrue(112 < AlphaBalance.DISSOLVES_MG_PER_L);
    }

    @Test
    void the_caution_for_dry_hops_is_a_pound_in_a_us_beer_barrel() {
        // Erratum: Hopsteiner prints 0.381 kg/hL; a pound in 31 US gallons is 0.38654 kg/hL.
        double exact = 1000 * POUND_KG / (US_BEER_BARREL_L / 100);
        assertEquals(386.536862, exact, 1e-6);
        assertEquals(exact, AlphaBalance.DRY_HOP_CAUTION_G_PER_HL, 0.5);
    }

    @Test
    void hops_without_alpha_or_utilisation_cannot_be_weighed_out() {
        refused(() -> AlphaBalance.massKg(20, 0, 0.3, 100), "alpha acid of bittering hops", "more than 0 %");
        refused(() -> AlphaBalance.massKg(20, 0.05, 0, 100), "utilisation of bittering hops", "more than 0");
        refused(() -> AlphaBalance.massOfNewLotKg(5, 0.05, 0), "new lot");
        assertEquals(0, AlphaBalance.ebu(5, 0, 0.3, 100));
        assertEquals(0, AlphaBalance.ebu(5, 0.05, 0, 100));
    }

    @Test
    void figures_beyond_sense_are_refused() {
        refused(() -> AlphaBalance.ebu(-1, 0.05, 0.3, 100), "weight of hops", "-1 kg");
        refused(() -> AlphaBalance.ebu(1, 5, 0.3, 100), "alpha acid", "500 %");
        refused(() -> AlphaBalance.ebu(1, 0.05, 0.3, 0), "volume");
        refused(() -> AlphaBalance.ebu(1, 0.05, Double.NaN, 100), "utilisation");
        refused(() -> AlphaBalance.massKg(Double.NaN, 0.05, 0.3, 100), "bitterness");
        refused(() -> AlphaBalance.rateForOilGPerHl(1, 0), "oil of the hops");
        refused(() -> AlphaBalance.blendAlpha(List.of(new Parcel(0, 0.05))), "blended hops");
        refused(() -> AlphaBalance.blendAlpha(List.of()), "blended hops");
        refused(() -> AlphaBalance.shareOfLot(0.098, 0.062, 0.11), "6.2 % to 9.8 %", "11 %");
        refused(() -> AlphaBalance.shareOfLot(0.05, 0.05, 0.05), "different alpha acids");
        refused(() -> AlphaBalance.shareOfLot(0.05, 0.06, Double.NaN), "alpha acid of the blend");
    }

    private static double clamped(double blend, double a, double b) {
        return Math.min(Math.max(blend, Math.min(a, b)), Math.max(a, b));
    }

    private static double worked(String kind, Map<String, Double> given) {
        return switch (kind) {
            case "alpha_ratio" ->
                AlphaBalance.massOfNewLotKg(
                        of(given, "m_old_kg"), of(given, "alpha_old") / 100, of(given, "alpha_new") / 100);
            case "blend_alpha" ->
                100
                        * AlphaBalance.blendAlpha(List.of(
                                new Parcel(of(given, "m1"), of(given, "a1") / 100),
                                new Parcel(of(given, "m2"), of(given, "a2") / 100)));
            case "blend_fraction" ->
                AlphaBalance.shareOfLot(of(given, "aA") / 100, of(given, "aB") / 100, of(given, "target") / 100);
            case "dry_to_asis" -> dryFromAsIs(of(given, "alpha_asis") / 100, of(given, "moisture") / 100);
            case "oil_dose" -> AlphaBalance.rateForOilGPerHl(of(given, "dose_mL_hL"), of(given, "oil_mL_100g"));
            default -> throw new AssertionError("no such kind: " + kind);
        };
    }

    /** The dry figure, per cent, found by what the analysis makes of one per cent dry. */
    private static double dryFromAsIs(double asIs, double moisture) {
        HopAnalysis onePercentDry = new HopAnalysis(
                LocalDate.of(2026, 11, 1),
                OptionalDouble.of(0.01),
                AlphaMethod.HPLC,
                MoistureBasis.DRY,
                OptionalDouble.of(moisture),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        return asIs / onePercentDry.alphaAsIs().orElseThrow();
    }

    private static double of(Map<String, Double> given, String name) {
        Double figure = given.get(name);
        if (figure == null) {
            throw new AssertionError("expected " + name + ", found " + given.keySet());
        }
        return figure;
    }

    private static Map<String, Double> given(String inputs) {
        Map<String, Double> given = new HashMap<>();
        for (String input : Arrays.asList(inputs.split(";", -1))) {
            int sign = input.indexOf('=');
            given.put(
                    input.substring(0, sign),
                    Double.parseDouble(input.substring(sign + 1).replace("%", "")));
        }
        return given;
    }
}
