package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TrueStrengthTest {
    private static final double PRINTED = 0.0001;
    private static final double PRINTED_SHARE = 0.00006;

    private static Gravity spoken(Map<String, String> row, String column) {
        return Gravity.ofDegrees(ReferenceTable.number(row, column) - 1000);
    }

    @Test
    void strength_and_extract_of_common_gravities_agree_with_another_solution() {
        for (Map<String, String> row : ReferenceTable.read("wort/original_and_present_gravity.csv")) {
            Gravity og = spoken(row, "og");
            Gravity pg = spoken(row, "pg");
            TrueStrength.Result found = TrueStrength.of(og, pg);
            assertEquals(ReferenceTable.number(row, "original_extract"), found.originalExtractPlato(), PRINTED);
            assertEquals(ReferenceTable.number(row, "apparent_extract"), found.apparentExtractPlato(), PRINTED);
            assertEquals(ReferenceTable.number(row, "volume_real_extract"), found.realExtractPlato(), PRINTED);
            assertEquals(ReferenceTable.number(row, "volume_abw"), found.abwPercent(), PRINTED);
            assertEquals(ReferenceTable.number(row, "volume_abv"), found.abv().percent(), PRINTED);
            TrueStrength.Result byWeight = TrueStrength.of(og, pg, TrueStrength.Basis.WEIGHT);
            assertEquals(ReferenceTable.number(row, "weight_real_extract"), byWeight.realExtractPlato(), PRINTED);
            assertEquals(ReferenceTable.number(row, "weight_abw"), byWeight.abwPercent(), PRINTED);
            assertEquals(
                    ReferenceTable.number(row, "weight_abv"), byWeight.abv().percent(), PRINTED);
            assertEquals(
                    ReferenceTable.number(row, "apparent_percent") / 100, Attenuation.apparent(og, pg), PRINTED_SHARE);
            assertEquals(
                    ReferenceTable.number(row, "apparent_on_plato_percent") / 100,
                    Attenuation.apparentOnPlato(og, pg),
                    PRINTED_SHARE);
            assertEquals(
                    ReferenceTable.number(row, "real_simple_percent") / 100,
                    Attenuation.realSimple(found.originalExtractPlato(), found.realExtractPlato()),
                    PRINTED_SHARE);
            assertEquals(
                    ReferenceTable.number(row, "real_asbc_percent") / 100,
                    Attenuation.realAsbc(found.originalExtractPlato(), found.realExtractPlato()),
                    PRINTED_SHARE);
        }
    }

    @Test
    void the_true_strength_is_near_that_for_duty_but_is_not_the_same_figure() {
        for (Map<String, String> row : ReferenceTable.read("wort/original_and_present_gravity.csv")) {
            double above =
                    TrueStrength.of(spoken(row, "og"), spoken(row, "pg")).abv().percent()
                            - ReferenceTable.number(row, "duty_strength_unrounded");
            assertTrue(above > -0.01 && above < 0.06, row.toString());
        }
    }

    @Test
    void the_means_of_three_published_sets_of_brews_are_met_as_well_as_ballings_balance_meets_them() {
        // Cutaia, Reid and Speers 2009: measured original extract is off Balling's by -0.10 to +0.23 °P, that is half
        // as
        // much in alcohol by weight.
        for (Map<String, String> row : ReferenceTable.read("wort/cutaia_2009_means.csv")) {
            TrueStrength.Result found = TrueStrength.of(
                    Gravity.ofPlato(ReferenceTable.number(row, "original_extract")),
                    Gravity.ofPlato(ReferenceTable.number(row, "apparent_extract")));
            assertEquals(ReferenceTable.number(row, "abw"), found.abwPercent(), 0.15, row.toString());
            assertEquals(ReferenceTable.number(row, "real_extract"), found.realExtractPlato(), 0.15, row.toString());
        }
    }

    @Test
    void ballings_tables_are_met_within_one_per_cent_up_to_20_plato() {
        // Compared at three quarters attenuated, on the weight basis that Balling worked in.
        for (Map<String, String> row : ReferenceTable.read("wort/balling_alcohol_factors.csv")) {
            double original = ReferenceTable.number(row, "original_extract");
            if (original <= 20) {
                double abw = TrueStrength.of(
                                Gravity.ofPlato(original), Gravity.ofPlato(original / 4), TrueStrength.Basis.WEIGHT)
                        .abwPercent();
                double factor = ReferenceTable.number(row, "factor");
                assertEquals(factor, abw / (original * 0.75), 0.01 * factor);
            }
        }
    }

    @Test
    void a_degree_fermented_in_the_cask_gives_half_a_volume_of_gas() {
        for (Map<String, String> row : ReferenceTable.read("wort/fermented_in_cask.csv")) {
            Gravity og = spoken(row, "og");
            double gained = TrueStrength.of(og, spoken(row, "pg_final")).abv().percent()
                    - TrueStrength.of(og, spoken(row, "pg_at_racking")).abv().percent();
            assertEquals(ReferenceTable.number(row, "abv_gained"), gained, PRINTED);
            double drop = ReferenceTable.number(row, "drop");
            double gramsPerLitre = ReferenceTable.number(row, "grams_per_litre");
            // Balling: 0.9565 g of gas to a gram of ethanol of 789.239 g/L.
            assertEquals(gramsPerLitre, gained / 100 * 789.239 * 0.9565, 0.001);
            assertEquals(gramsPerLitre, drop * Condition.GRAMS_PER_LITRE_PER_DEGREE, 0.03 * gramsPerLitre);
            assertEquals(ReferenceTable.number(row, "volumes"), drop * Condition.VOLUMES_PER_DEGREE, 0.02 * drop);
        }
    }

    @Test
    void the_balling_balance_closes() {
        // 2.0665 g of extract to a gram of ethanol, 0.9565 g of gas and 0.11 g of yeast: OE = 100 (2.0665 A + RE) /
        // (100 + 1.0665 A).
        Seeded.cases(300, random -> {
            Gravity og = Gravity.ofDegrees(Seeded.between(random, 20, 110));
            Gravity pg = Gravity.ofDegrees(og.excessDegrees() * Seeded.between(random, 0.02, 0.98));
            for (TrueStrength.Basis basis : TrueStrength.Basis.values()) {
                TrueStrength.Result beer = TrueStrength.of(og, pg, basis);
                double again = 100
                        * (2.0665 * beer.abwPercent() + beer.realExtractPlato())
                        / (100 + 1.0665 * beer.abwPercent());
                assertEquals(beer.originalExtractPlato(), again, 1e-9);
                assertTrue(beer.realExtractPlato() > beer.apparentExtractPlato());
            }
        });
    }

    @Test
    void the_lower_the_present_gravity_the_stronger_the_beer() {
        Seeded.cases(300, random -> {
            Gravity og = Gravity.ofDegrees(Seeded.between(random, 20, 110));
            Gravity pg = Gravity.ofDegrees(Seeded.between(random, 1, 20));
            Gravity lower = Gravity.ofDegrees(pg.excessDegrees() - 0.1);
            assertTrue(TrueStrength.of(og, lower).abv().percent()
                    > TrueStrength.of(og, pg).abv().percent());
        });
    }

    @Test
    void wort_that_has_not_fermented_has_no_strength() {
        TrueStrength.Result wort = TrueStrength.of(Gravity.of(1.040), Gravity.of(1.040));
        assertEquals(0, wort.abv().percent());
        assertEquals(wort.originalExtractPlato(), wort.realExtractPlato());
        assertEquals(0, TrueStrength.of(Gravity.of(1), Gravity.of(1)).abv().percent());
        double start =
                TrueStrength.of(Gravity.of(1.040), Gravity.of(1.039999)).abv().percent();
        assertTrue(start > 0 && start < 0.001);
    }

    @Test
    void a_beer_may_end_lighter_than_water_but_not_lighter_than_its_alcohol_allows() {
        TrueStrength.Result dry = TrueStrength.of(Gravity.of(1.050), Gravity.of(0.998));
        assertTrue(dry.realExtractPlato() > 0 && dry.realExtractPlato() < 3);
        assertEquals(0, dry.apparentExtractPlato());
        Refusal.says(
                "expected at least that of a beer from 1.0100 with no extract left",
                () -> TrueStrength.of(Gravity.of(1.010), Gravity.of(0.990)));
        Refusal.says("no extract left", () -> TrueStrength.of(Gravity.of(1), Gravity.of(0.999)));
        Refusal.says(
                "expected no more than the original gravity",
                () -> TrueStrength.of(Gravity.of(1.010), Gravity.of(1.011)));
        Refusal.says(
                "original gravity: expected that of water or more",
                () -> TrueStrength.of(Gravity.of(0.999), Gravity.of(0.998)));
        Refusal.says("expected 0.9 to 1.17874", () -> TrueStrength.of(Gravity.of(1.19), Gravity.of(1.05)));
    }
}
