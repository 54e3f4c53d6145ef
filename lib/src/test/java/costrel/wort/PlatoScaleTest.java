package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlatoScaleTest {
    private static final double TABLE_114_PLATO = 0.005;
    private static final double TABLE_114_SG = 0.00003;
    private static final double PRINTED = 0.00006;
    private static final double ROUND_TRIP = 1e-9;

    @Test
    void the_scale_keeps_to_nbs_circular_c440_table_114() {
        for (Map<String, String> row : ReferenceTable.read("wort/nbs_c440_table_114.csv")) {
            double brix = ReferenceTable.number(row, "brix");
            double sg = ReferenceTable.number(row, "sg");
            assertEquals(brix, PlatoScale.platoFromSg(sg), TABLE_114_PLATO);
            assertEquals(sg, PlatoScale.sgFromPlato(brix), TABLE_114_SG);
        }
    }

    @Test
    void the_cubics_give_what_they_give_elsewhere() {
        for (Map<String, String> row : ReferenceTable.read("wort/plato_cubics.csv")) {
            double sg = ReferenceTable.number(row, "sg");
            if (sg > 1 && sg < 1.1056) {
                assertEquals(ReferenceTable.number(row, "asbc"), PlatoScale.platoFromSg(sg), PRINTED);
            }
            if (sg > 1.1103) {
                assertEquals(ReferenceTable.number(row, "nbs"), PlatoScale.platoFromSg(sg), PRINTED);
            }
        }
        // Encyclopaedia article on Brix: SG 1.040 is 9.99359 °P by the ASBC cubic; the printed digits agree to 2e-4.
        assertEquals(9.99359, PlatoScale.platoFromSg(1.040), 2e-4);
    }

    @Test
    void water_and_anything_lighter_has_no_extract() {
        assertEquals(0, PlatoScale.platoFromSg(1));
        assertEquals(0, PlatoScale.platoFromSg(1.00001));
        assertEquals(0, PlatoScale.platoFromSg(1.0000115));
        assertEquals(0, PlatoScale.platoFromSg(0.995));
        assertEquals(1, PlatoScale.sgFromPlato(0));
    }

    @Test
    void extract_and_density_go_there_and_back() {
        Seeded.cases(2000, random -> {
            double plato = Seeded.between(random, 0, 40);
            assertEquals(plato, PlatoScale.platoFromSg(PlatoScale.sgFromPlato(plato)), ROUND_TRIP);
            double sg = Seeded.between(random, 1.00002, 1.1787);
            assertEquals(sg, PlatoScale.sgFromPlato(PlatoScale.platoFromSg(sg)), ROUND_TRIP);
        });
    }

    @Test
    void the_scale_rises_throughout_also_where_one_cubic_passes_into_the_other() {
        double before = PlatoScale.platoFromSg(1.0001);
        for (int i = 1; i <= 178_600; i++) {
            double now = PlatoScale.platoFromSg(1.0001 + i * 1e-6);
            assertTrue(now > before && now - before < 0.0004, "step at SG " + (1.0001 + i * 1e-6));
            before = now;
        }
    }

    @Test
    void the_scale_ends_where_its_published_validity_does() {
        assertEquals(40, PlatoScale.platoFromSg(PlatoScale.MOST_SG), TABLE_114_PLATO);
        Refusal.says("expected 0.9 to 1.17874, found 1.18", () -> PlatoScale.platoFromSg(1.18));
        Refusal.says("expected 0.9 to 1.17874, found NaN", () -> PlatoScale.platoFromSg(Double.NaN));
        Refusal.says("extract: expected 0 to 40 °P, found 41", () -> PlatoScale.sgFromPlato(41));
        Refusal.says("extract: expected 0 to 40 °P, found -1", () -> PlatoScale.sgFromPlato(-1));
    }
}
