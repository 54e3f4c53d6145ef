package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ConditionTest {
    private static final double LAST_DIGIT_G_PER_L = 0.0501;
    private static final double PRINTED_BAR = 0.00051;

    @Test
    void the_published_table_of_gas_in_beer_is_met_to_its_last_digit() {
        for (Map<String, String> row : ReferenceTable.read("wort/co2_in_beer.csv")) {
            double found = Condition.equilibriumGramsPerLitre(
                    ReferenceTable.number(row, "celsius"), ReferenceTable.number(row, "gauge_bar"));
            assertEquals(ReferenceTable.number(row, "grams_per_litre"), found, LAST_DIGIT_G_PER_L, row.toString());
        }
    }

    @Test
    void pressure_in_a_closed_container_agrees_with_another_solution() {
        for (Map<String, String> row : ReferenceTable.read("wort/co2_pressure.csv")) {
            double volumes = ReferenceTable.number(row, "volumes");
            double celsius = ReferenceTable.number(row, "celsius");
            double expected = ReferenceTable.number(row, "gauge_bar");
            assertEquals(expected, Condition.gaugePressureBarExtrapolated(volumes, celsius), PRINTED_BAR);
            if (celsius <= 25) {
                assertEquals(expected, Condition.gaugePressureBar(volumes, celsius), PRINTED_BAR);
            }
        }
    }

    @Test
    void pressure_and_gas_go_there_and_back() {
        Seeded.cases(500, random -> {
            double volumes = Seeded.between(random, 0.5, 4);
            double celsius = Seeded.between(random, -4.9, 40);
            double bar = Condition.gaugePressureBarExtrapolated(volumes, celsius);
            double held =
                    Condition.volumesFromGramsPerLitre(Condition.equilibriumGramsPerLitreExtrapolated(celsius, bar));
            assertEquals(volumes, held, 1e-9);
            assertTrue(Condition.gaugePressureBarExtrapolated(volumes, celsius - 0.01) < bar);
        });
    }

    @Test
    void a_volume_is_the_gas_of_a_litre_at_freezing_point() {
        // 44.0095 g/mol over 22.41397 L/mol.
        assertEquals(44.0095 / 22.41397, Condition.gramsPerLitreFromVolumes(1), 0.00005);
        assertEquals(2, Condition.volumesFromGramsPerLitre(Condition.gramsPerLitreFromVolumes(2)), 1e-12);
    }

    @Test
    void a_beer_short_of_condition_is_racked_above_its_final_gravity() {
        Gravity fg = Gravity.of(1.010);
        // 0.84 volumes held at 20 °C, 1.1 wanted: half a degree; flat beer of 0.5 volumes: 1.2 degrees.
        assertEquals(10.52, Condition.racking(fg, 1.1, 0.84).excessDegrees(), 1e-9);
        assertEquals(11.2, Condition.racking(fg, 1.1, 0.5).excessDegrees(), 1e-9);
    }

    @Test
    void a_beer_with_condition_enough_is_racked_at_its_final_gravity_and_never_under() {
        assertEquals(Gravity.of(1.010), Condition.racking(Gravity.of(1.010), 1.0, 1.4));
    }

    @Test
    void standard_glass_is_warned_of_from_3_volumes_and_refused_from_4() {
        assertEquals(BottleVerdict.WITHIN, Condition.bottleVerdict(2.99, OptionalDouble.empty()));
        assertEquals(BottleVerdict.CAUTION, Condition.bottleVerdict(3.0, OptionalDouble.empty()));
        assertEquals(BottleVerdict.CAUTION, Condition.bottleVerdict(3.99, OptionalDouble.empty()));
        assertEquals(BottleVerdict.REFUSED, Condition.bottleVerdict(4.0, OptionalDouble.empty()));
    }

    @Test
    void a_stated_rating_takes_the_place_of_the_refusal_but_not_of_the_caution() {
        assertEquals(BottleVerdict.CAUTION, Condition.bottleVerdict(4.2, OptionalDouble.of(4.5)));
        assertEquals(BottleVerdict.REFUSED, Condition.bottleVerdict(4.6, OptionalDouble.of(4.5)));
        assertEquals(BottleVerdict.REFUSED, Condition.bottleVerdict(2.6, OptionalDouble.of(2.5)));
        assertEquals(BottleVerdict.WITHIN, Condition.bottleVerdict(2.4, OptionalDouble.of(2.5)));
        for (BottleVerdict verdict : BottleVerdict.values()) {
            assertFalse(verdict.words().isBlank());
        }
    }

    @Test
    void outside_the_table_a_figure_is_only_had_by_asking_for_an_extrapolation() {
        Refusal.says(
                "temperature of beer: expected -1 to 25 °C, found 30", () -> Condition.equilibriumGramsPerLitre(30, 0));
        Refusal.says(
                "head pressure: expected 0 to 1 bar gauge, found 1.5",
                () -> Condition.equilibriumGramsPerLitre(10, 1.5));
        Refusal.says("expected -1 to 25 °C, found 26", () -> Condition.gaugePressureBar(2, 26));
        Refusal.says("expected -5 to 40 °C, found 41", () -> Condition.gaugePressureBarExtrapolated(2, 41));
        Refusal.says(
                "expected -1 to 8 bar gauge, found NaN",
                () -> Condition.equilibriumGramsPerLitreExtrapolated(30, Double.NaN));
        Refusal.says("condition: expected 0 to 10 volumes, found -1", () -> Condition.gaugePressureBar(-1, 20));
        Refusal.says("wanted condition", () -> Condition.racking(Gravity.of(1.010), Double.NaN, 1));
        Refusal.says("condition held", () -> Condition.racking(Gravity.of(1.010), 1, -1));
        Refusal.says("rating of the bottle", () -> Condition.bottleVerdict(2, OptionalDouble.of(0)));
        Refusal.says("condition in bottle", () -> Condition.bottleVerdict(Double.NaN, OptionalDouble.empty()));
    }
}
