package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class EnergyValueTest {
    @Test
    void twelve_per_cent_by_volume_alone_is_275_kilojoules() {
        // Regulation (EU) No 1169/2011, Annex XIV: 29 kJ and 7 kcal for a gram of alcohol; 100 mL · 12 % · 0.789 g/mL.
        EnergyValue found = EnergyValue.of(Strength.of(12), 0, Gravity.of(1));
        assertEquals(275, Math.round(found.kilojoulesPer100mL()));
        assertEquals(66, Math.round(found.kilocaloriesPer100mL()));
    }

    @Test
    void three_grams_of_sugar_in_a_litre_are_5_kilojoules() {
        // The same annex: 17 kJ and 4 kcal for a gram of carbohydrate; 0.3 g in 100 mL.
        EnergyValue found = EnergyValue.of(Strength.of(0), 0.3 / 0.9982, Gravity.of(1));
        assertEquals(5, Math.round(found.kilojoulesPer100mL()));
        assertEquals(1, Math.round(found.kilocaloriesPer100mL()));
    }

    @Test
    void extract_counts_by_the_volume_of_the_beer() {
        double light = EnergyValue.of(Strength.of(4), 4, Gravity.of(1)).kilojoulesPer100mL();
        double heavy = EnergyValue.of(Strength.of(4), 4, Gravity.of(1.010)).kilojoulesPer100mL();
        // 4 g/100 g at SG 1.010 and at SG 1 differ by 4 · 0.010 · 0.9982 g in 100 mL.
        assertEquals(4 * 0.010 * 0.9982 * 17, heavy - light, 1e-9);
        assertTrue(heavy > light);
    }

    @Test
    void what_cannot_be_is_refused() {
        Refusal.says(
                "real extract: expected 0 to 100 °P, found -1",
                () -> EnergyValue.of(Strength.of(4), -1, Gravity.of(1.010)));
        Refusal.says("energy value: expected 0 kJ in 100 mL or more", () -> new EnergyValue(-1, 0));
        Refusal.says("energy value: expected 0 kcal in 100 mL or more", () -> new EnergyValue(0, Double.NaN));
    }
}
