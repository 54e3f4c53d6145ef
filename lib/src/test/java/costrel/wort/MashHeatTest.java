package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MashHeatTest {
    private static final double PRINTED_C = 0.0051;
    private static final double ROUND_TRIP = 1e-9;

    @Test
    void specific_and_slaking_heat_follow_the_brewing_room_book() {
        for (Map<String, String> row : ReferenceTable.read("wort/strike_heat.csv")) {
            double moisture = ReferenceTable.number(row, "moisture_percent") / 100;
            assertEquals(ReferenceTable.number(row, "specific_heat"), MashHeat.specificHeat(moisture), ROUND_TRIP);
            assertEquals(ReferenceTable.number(row, "slaking_heat_C"), MashHeat.slakingHeatK(moisture), ROUND_TRIP);
            // The same column in Fahrenheit degrees, printed to a tenth like the other.
            assertEquals(ReferenceTable.number(row, "slaking_heat_F"), 1.8 * MashHeat.slakingHeatK(moisture), 0.14);
        }
    }

    @Test
    void between_two_rows_the_heats_lie_on_a_straight_line() {
        assertEquals(1.5, MashHeat.slakingHeatK(0.05), ROUND_TRIP);
        assertEquals(0.405, MashHeat.specificHeat(0.05), ROUND_TRIP);
        assertEquals(1.9, MashHeat.slakingHeatK(0.035), ROUND_TRIP);
    }

    @Test
    void the_book_s_mash_comes_to_its_heat() {
        // Brewing Room Book 1984/85: 2 % moisture, grist 27 °C, liquor 69 °C, 2.68 hL to 100 kg.
        assertEquals(65.96, MashHeat.initialHeat(69, 27, 2.68, 0.02), PRINTED_C);
    }

    @Test
    void the_catalogue_s_printed_sum_is_wrong() {
        // Supply-trade catalogue: 3 %, grist 30 °C, liquor 60 °C, 3.0 hL to 100 kg prints 65.9, hotter than its own
        // liquor.
        assertEquals(58.57, MashHeat.initialHeat(60, 30, 3, 0.03), PRINTED_C);
    }

    @Test
    void liquor_for_a_mash_at_66() {
        // The same heat balance turned round by hand: 66 °C from grist at 15 °C, 2.5 L/kg, 3 % moisture.
        assertEquals(71.724, MashHeat.strikeHeat(66, 15, 2.5, 0.03, 0), 0.0005);
        assertEquals(73.224, MashHeat.strikeHeat(66, 15, 2.5, 0.03, 1.5), 0.0005);
    }

    @Test
    void strike_and_initial_heat_go_there_and_back() {
        Seeded.cases(1000, random -> {
            double initial = Seeded.between(random, 40, 75);
            double grist = Seeded.between(random, -5, 35);
            double ratio = Seeded.between(random, 1.8, 4);
            double moisture = Seeded.between(random, 0, 0.08);
            double strike = MashHeat.strikeHeat(initial, grist, ratio, moisture, 0);
            assertEquals(initial, MashHeat.initialHeat(strike, grist, ratio, moisture), ROUND_TRIP);
            assertTrue(MashHeat.strikeHeat(initial, grist - 1, ratio, moisture, 0) > strike, "colder grist");
            assertTrue(MashHeat.strikeHeat(initial + 1, grist, ratio, moisture, 0) > strike, "hotter mash");
        });
    }

    @Test
    void liquor_that_would_have_to_be_hotter_than_boiling_is_still_a_figure() {
        assertTrue(MashHeat.strikeHeat(75, -10, 1, 0.04, 0) > 100);
    }

    @Test
    void what_cannot_be_is_refused() {
        Refusal.says(
                "moisture of the grist: expected a fraction of 0 to 0.08 (8 %), found 0.081",
                () -> MashHeat.specificHeat(0.081));
        Refusal.says("found 4", () -> MashHeat.initialHeat(69, 27, 2.68, 4));
        Refusal.says("found NaN", () -> MashHeat.slakingHeatK(Double.NaN));
        Refusal.says(
                "liquor to grist: expected more than 0 L/kg, found 0", () -> MashHeat.initialHeat(69, 27, 0, 0.02));
        Refusal.says("liquor to grist", () -> MashHeat.strikeHeat(66, 15, -2, 0.02, 0));
        Refusal.says("heat allowance: expected 0 K or more", () -> MashHeat.strikeHeat(66, 15, 2, 0.02, -1));
        Refusal.says("strike heat: expected 0 to 150 °C", () -> MashHeat.initialHeat(Double.NaN, 15, 2, 0.02));
        Refusal.says("heat of the grist", () -> MashHeat.initialHeat(70, 200, 2, 0.02));
        Refusal.says("initial heat: expected 0 to 100 °C, found 150", () -> MashHeat.strikeHeat(150, 15, 2, 0.02, 0));
    }
}
