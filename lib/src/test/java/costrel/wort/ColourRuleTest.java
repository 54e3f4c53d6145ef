package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import costrel.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ColourRuleTest {
    /** kg·°L in a litre times 8.3454 is lb·°L in a US gallon; malt of 1 °L is taken as 1.97 EBC. */
    private static final double MCU_PER_KG_EBC_PER_L = 8.3454 / 1.97;

    @Test
    void moreys_curve_gives_its_published_points() {
        for (Map<String, String> row : ReferenceTable.read("wort/morey_colour.csv")) {
            double kgEbcPerL = ReferenceTable.number(row, "mcu") / MCU_PER_KG_EBC_PER_L;
            double ebc = ReferenceTable.number(row, "ebc");
            assertEquals(ebc, ColourRule.MOREY.of(kgEbcPerL * 20, 20).ebc(), 0.0006 + 2e-5 * ebc, row.toString());
            assertEquals(ReferenceTable.number(row, "srm") < 50, ColourRule.MOREY.within(Colour.of(ebc)));
        }
    }

    @Test
    void malt_in_lovibond_and_kilograms_comes_to_the_same_units() {
        // 4 kg at 3.8 °L, 0.2 at 20, 0.2 at 45 and 0.05 at 530 in 20 L are 22.8247 lb·°L in a US gallon.
        double kgEbc = 1.97 * (4 * 3.8 + 0.2 * 20 + 0.2 * 45 + 0.05 * 530);
        double expected = 1.97 * 1.4922 * Math.pow(22.8247, 0.6859);
        assertEquals(expected, ColourRule.MOREY.of(kgEbc, 20).ebc(), 0.001);
    }

    @Test
    void on_a_bitters_grist_the_two_rules_part_by_more_than_half() {
        // 14.25 kg/hL pale at 5 EBC, 0.75 crystal at 150, 0.05 chocolate at 1100: worked out in another program.
        double kgEbcPerHl = 14.25 * 5 + 0.75 * 150 + 0.05 * 1100;
        assertEquals(23.875, ColourRule.LINEAR.of(kgEbcPerHl, 100).ebc(), 1e-9);
        assertEquals(14.374, ColourRule.MOREY.of(kgEbcPerHl, 100).ebc(), 0.001);
    }

    @Test
    void a_stout_beyond_the_published_limit_keeps_its_figure_and_is_marked() {
        Colour stout = ColourRule.MOREY.of(5000, 100);
        assertTrue(stout.ebc() > 98.5);
        assertFalse(ColourRule.MOREY.within(stout));
        assertTrue(ColourRule.LINEAR.within(ColourRule.LINEAR.of(5000, 100)));
    }

    @Test
    void more_colour_in_the_grist_is_more_in_the_wort_and_only_the_ratio_counts() {
        Seeded.cases(500, random -> {
            double kgEbc = Seeded.between(random, 0, 3000);
            double litres = Seeded.between(random, 50, 500);
            for (ColourRule rule : new ColourRule[] {ColourRule.MOREY, ColourRule.LINEAR}) {
                double ebc = rule.of(kgEbc, litres).ebc();
                assertTrue(rule.of(kgEbc + 1, litres).ebc() > ebc);
                assertEquals(ebc, rule.of(3 * kgEbc, 3 * litres).ebc(), 1e-9 * (1 + ebc));
            }
        });
    }

    @Test
    void rules_are_found_by_name() {
        assertSame(ColourRule.MOREY, ColourRule.named("morey"));
        assertSame(ColourRule.LINEAR, ColourRule.named(" Linear "));
        assertSame(ColourRule.MOREY, ColourRule.named(ColourRule.MOREY.name()));
        assertEquals("linear", ColourRule.LINEAR.toString());
        assertEquals(0.25, ColourRule.MOREY.uncertaintyShare());
        assertTrue(ColourRule.MOREY.source().contains("Morey"));
        Refusal.says("colour rule: expected morey or linear, found 'daniels'", () -> ColourRule.named("daniels"));
    }

    @Test
    void what_cannot_be_is_refused() {
        Refusal.says("volume of wort: expected more than 0 L, found 0", () -> ColourRule.MOREY.of(10, 0));
        Refusal.says("colour of the grist: expected 0 kg·EBC or more, found -1", () -> ColourRule.LINEAR.of(-1, 10));
        Refusal.says("found NaN", () -> ColourRule.LINEAR.of(Double.NaN, 10));
        assertEquals(0, ColourRule.MOREY.of(0, 10).ebc());
    }
}
