package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DensityTest {
    private static final double PRINTED_KG_PER_M3 = 0.00006;
    private static final double ROUND_TRIP = 1e-9;

    @Test
    void water_keeps_to_kell_and_to_iapws_95() {
        for (Map<String, String> row : ReferenceTable.read("wort/water_density.csv")) {
            double celsius = ReferenceTable.number(row, "celsius");
            double found = WaterDensity.kgPerCubicMetre(celsius);
            assertEquals(ReferenceTable.number(row, "kell_kg_per_m3"), found, PRINTED_KG_PER_M3);
            assertEquals(
                    ReferenceTable.number(row, "iapws95_kg_per_m3"),
                    found,
                    celsius <= 60 ? 0.004 : 0.013,
                    row.toString());
            assertEquals(
                    ReferenceTable.number(row, "iapws95_volume_against_20C"),
                    1 / WaterDensity.contraction(celsius),
                    0.00002);
        }
    }

    @Test
    void wort_shrinks_by_four_per_cent_from_the_boil() {
        // The trade's factor 0.96: MBAA, Ask the Brewmaster, brewhouse yield.
        assertEquals(0.96009, WaterDensity.contraction(100), 0.00001);
        assertEquals(4800, WaterDensity.volumeAt20(5000, 100), 0.5);
        assertEquals(1, WaterDensity.contraction(20));
    }

    @Test
    void hot_and_cold_volumes_go_there_and_back() {
        Seeded.cases(1000, random -> {
            double celsius = Seeded.between(random, 0, 150);
            double litres = Seeded.between(random, 0, 10_000);
            assertEquals(
                    litres,
                    WaterDensity.volumeAt20(WaterDensity.volumeAt(litres, celsius), celsius),
                    ROUND_TRIP * 10_000);
        });
    }

    @Test
    void wort_keeps_to_the_icumsa_polynomial_at_every_heat() {
        for (Map<String, String> row : ReferenceTable.read("wort/wort_density.csv")) {
            double plato = ReferenceTable.number(row, "plato");
            double celsius = ReferenceTable.number(row, "celsius");
            double found = WortDensity.kgPerCubicMetre(plato, celsius);
            assertEquals(ReferenceTable.number(row, "kg_per_m3"), found, PRINTED_KG_PER_M3, row.toString());
            assertEquals(
                    ReferenceTable.number(row, "volume_against_20C"),
                    WortDensity.kgPerCubicMetre(plato, 20) / found,
                    0.000001);
        }
    }

    @Test
    void wort_agrees_with_the_crc_handbook_on_sucrose() {
        for (Map<String, String> row : ReferenceTable.read("wort/crc_sucrose.csv")) {
            double percent = ReferenceTable.number(row, "mass_percent");
            double tolerance = percent <= 30 ? 0.000075 : 0.00051;
            assertEquals(
                    ReferenceTable.number(row, "g_per_cm3"),
                    WortDensity.kgPerCubicMetre(percent, 20) / 1000,
                    tolerance);
        }
    }

    @Test
    void wort_contracts_as_water_does() {
        for (double plato = 0; plato <= 20; plato += 5) {
            double ofWort = WortDensity.kgPerCubicMetre(plato, 100) / WortDensity.kgPerCubicMetre(plato, 20);
            assertEquals(WaterDensity.contraction(100), ofWort, 0.0001);
        }
    }

    @Test
    void a_litre_of_wort_at_20_weighs_its_gravity() {
        assertEquals(1.038128, WortDensity.kgPerLitreAt20(Gravity.of(1.040)), 1e-9);
        // Against the density of sucrose solutions: 10 °P weighs 1.0381 kg/L (CRC Handbook).
        assertEquals(1.0381, WortDensity.kgPerLitreAt20(Gravity.ofPlato(10)), 0.0001);
    }

    @Test
    void heavier_wort_is_denser_and_hotter_wort_is_lighter() {
        Seeded.cases(1000, random -> {
            double plato = Seeded.between(random, 0, 79);
            double celsius = Seeded.between(random, 5, 99);
            double here = WortDensity.kgPerCubicMetre(plato, celsius);
            assertTrue(WortDensity.kgPerCubicMetre(plato + 1, celsius) > here);
            assertTrue(WortDensity.kgPerCubicMetre(plato, celsius + 1) < here);
        });
    }

    @Test
    void temperatures_outside_the_published_range_are_refused() {
        Refusal.says("temperature of water: expected 0 to 150 °C, found -1", () -> WaterDensity.kgPerCubicMetre(-1));
        Refusal.says("expected 0 to 150 °C, found NaN", () -> WaterDensity.contraction(Double.NaN));
        Refusal.says("volume: expected 0 L or more, found -5", () -> WaterDensity.volumeAt(-5, 20));
        Refusal.says(
                "temperature of wort: expected 0 to 100 °C, found 101", () -> WortDensity.kgPerCubicMetre(10, 101));
        Refusal.says("extract: expected 0 to 80 °P, found 85", () -> WortDensity.kgPerCubicMetre(85, 20));
    }
}
