package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EthanolWaterTest {
    private static final double OIML_KG_PER_M3 = 0.01;
    private static final double FORMULA_KG_PER_M3 = 0.00006;
    private static final double ROUND_TRIP = 1e-9;

    @Test
    void the_published_table_by_volume_is_met_to_its_last_digit() {
        for (Map<String, String> row : ReferenceTable.read("wort/oiml_r22_by_volume.csv")) {
            double mass = EthanolWater.massFromVolumePercent(ReferenceTable.number(row, "volume_percent"));
            assertEquals(
                    ReferenceTable.number(row, "kg_per_m3"),
                    EthanolWater.densityByMass(mass, 20),
                    OIML_KG_PER_M3,
                    row.toString());
        }
    }

    @Test
    void all_coefficients_are_in_their_places() {
        for (Map<String, String> row : ReferenceTable.read("wort/oiml_r22_grid.csv")) {
            double mass = ReferenceTable.number(row, "mass_percent") / 100;
            double celsius = ReferenceTable.number(row, "celsius");
            assertEquals(
                    ReferenceTable.number(row, "kg_per_m3"),
                    EthanolWater.densityByMass(mass, celsius),
                    FORMULA_KG_PER_M3,
                    row.toString());
        }
    }

    @Test
    void the_sum_is_that_of_the_recommendation_at_any_strength_and_temperature() {
        List<Map<String, String>> coefficients = ReferenceTable.read("wort/oiml_r22_coefficients.csv");
        assertEquals(54, coefficients.size());
        Seeded.cases(300, random -> {
            double p = random.nextDouble();
            double t = Seeded.between(random, -20, 40);
            double sum = 0;
            for (Map<String, String> row : coefficients) {
                double first = ReferenceTable.number(row, "first");
                double value = ReferenceTable.number(row, "value");
                if ("A".equals(row.get("set"))) {
                    sum += value * Math.pow(p, first - 1);
                } else if ("B".equals(row.get("set"))) {
                    sum += value * Math.pow(t - 20, first);
                } else {
                    sum += value * Math.pow(p, ReferenceTable.number(row, "second")) * Math.pow(t - 20, first);
                }
            }
            assertEquals(sum, EthanolWater.densityByMass(p, t), 1e-7);
        });
    }

    @Test
    void strength_by_volume_turns_into_strength_by_mass() {
        for (Map<String, String> row : ReferenceTable.read("wort/oiml_r22_volume_to_mass.csv")) {
            double volume = ReferenceTable.number(row, "volume_percent");
            double mass = ReferenceTable.number(row, "mass_percent");
            assertEquals(mass, 100 * EthanolWater.massFromVolumePercent(volume), 0.000006);
            assertEquals(volume, EthanolWater.volumePercentFromMass(mass / 100), 0.00002);
            assertEquals(
                    ReferenceTable.number(row, "kg_per_m3"),
                    EthanolWater.densityByMass(mass / 100, 20),
                    FORMULA_KG_PER_M3);
        }
    }

    @Test
    void perrys_older_table_is_met_within_0_056() {
        for (Map<String, String> row : ReferenceTable.read("wort/perry_ethanol.csv")) {
            double mass = ReferenceTable.number(row, "mass_percent") / 100;
            assertEquals(
                    ReferenceTable.number(row, "kg_per_litre") * 1000,
                    EthanolWater.densityByMass(mass, 20),
                    0.056,
                    row.toString());
        }
    }

    @Test
    void the_crc_handbook_is_met_within_its_rounding_for_beers_and_0_3_kg_beyond() {
        for (Map<String, String> row : ReferenceTable.read("wort/crc_ethanol.csv")) {
            double percent = ReferenceTable.number(row, "mass_percent");
            assertEquals(
                    ReferenceTable.number(row, "g_per_cm3"),
                    EthanolWater.densityByMass(percent / 100, 20) / 1000,
                    percent <= 20 ? 0.00011 : 0.00031,
                    row.toString());
        }
    }

    @Test
    void mass_and_volume_go_there_and_back() {
        Seeded.cases(1000, random -> {
            double volume = Seeded.between(random, 0, 100);
            assertEquals(
                    volume, EthanolWater.volumePercentFromMass(EthanolWater.massFromVolumePercent(volume)), ROUND_TRIP);
        });
        assertEquals(0, EthanolWater.massFromVolumePercent(0));
        assertEquals(1, EthanolWater.massFromVolumePercent(100));
    }

    @Test
    void more_ethanol_is_lighter_at_the_temperatures_of_a_brewery() {
        Seeded.cases(1000, random -> {
            double mass = Seeded.between(random, 0, 0.99);
            double celsius = Seeded.between(random, 10, 40);
            assertTrue(EthanolWater.densityByMass(mass + 0.01, celsius) < EthanolWater.densityByMass(mass, celsius));
        });
    }

    @Test
    void what_is_outside_oiml_r22_is_refused() {
        Refusal.says(
                "temperature of spirit: expected -20 to 40 °C, found 41", () -> EthanolWater.densityByMass(0.1, 41));
        Refusal.says("mass fraction of ethanol: expected 0 to 1, found 5", () -> EthanolWater.densityByMass(5, 20));
        Refusal.says(
                "strength: expected 0 to 100 % vol, found NaN", () -> EthanolWater.massFromVolumePercent(Double.NaN));
    }
}
