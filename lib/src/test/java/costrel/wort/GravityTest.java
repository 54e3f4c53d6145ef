package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;

import costrel.ReferenceTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class GravityTest {
    private static final double EXACT = 1e-9;

    @Test
    void a_relative_density_is_taken_as_the_decimal_that_was_written() {
        assertEquals(Gravity.ofDegrees(40), Gravity.of(1.040));
        assertEquals(Gravity.ofDegrees(36.1), Gravity.of(1.0361));
        assertEquals(Gravity.ofDegrees(-2), Gravity.of(0.998));
        assertEquals(1.040, Gravity.of(1.040).sg());
    }

    @Test
    void every_way_of_writing_a_gravity_is_read() {
        assertEquals(Gravity.ofDegrees(40), Gravity.parse("1.040"));
        assertEquals(Gravity.ofDegrees(40), Gravity.parse("1040"));
        assertEquals(Gravity.ofDegrees(40.5), Gravity.parse("1040.5"));
        assertEquals(Gravity.ofDegrees(-2), Gravity.parse("0.998"));
        assertEquals(Gravity.ofDegrees(40), Gravity.parse(" 40 ° "));
        assertEquals(Gravity.ofDegrees(-2), Gravity.parse("-2°"));
        assertEquals(Gravity.ofPlato(10), Gravity.parse("10.0 °P"));
        assertEquals(Gravity.ofPlato(10), Gravity.parse("10 P"));
        assertEquals(Gravity.ofDegrees(40), Gravity.parse("14.4 lb/brl"));
    }

    @Test
    void a_gravity_that_could_mean_two_things_is_refused() {
        for (String text :
                List.of("40", "1", "1.5", "10400", "", "°", "1,040", "1.04e0", "NaN", "40 °C", "1.040 SG", "-1040")) {
            Refusal.says("gravity: expected a gravity such as 1.040", () -> Gravity.parse(text));
        }
        Refusal.says("expected -10 to 200 degrees over water, found 1040", () -> Gravity.parse("1040 °"));
        Refusal.says("found '1111111111111111111111111111111111111111...'", () -> Gravity.parse("1".repeat(1_000_000)));
    }

    @Test
    void a_gravity_outside_any_wort_or_beer_is_refused() {
        for (double degrees : new double[] {-10.1, 200.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            Refusal.says("gravity: expected -10 to 200", () -> Gravity.ofDegrees(degrees));
        }
        for (double sg : new double[] {0.9, 1.3, 40, 1040, Double.NaN}) {
            Refusal.says("expected a relative density of 0.990 to 1.200", () -> Gravity.of(sg));
        }
        Refusal.says(
                "expected 0.9 to 1.17874",
                () -> assertEquals(0, Gravity.of(1.19).plato()));
    }

    @Test
    void a_gravity_prints_as_many_places_as_it_needs() {
        assertEquals("1.0400", Gravity.of(1.040).toString());
        assertEquals("1.04005", Gravity.of(1.04005).toString());
        assertEquals("0.9980", Gravity.of(0.998).toString());
        assertEquals("1.0000", Gravity.ofDegrees(-0.0).toString());
        assertEquals("1.040027", Gravity.ofPlato(10).toString());
    }

    @Test
    void a_gravity_reads_back_what_it_printed() {
        Seeded.cases(2000, random -> {
            Gravity written = Gravity.of(
                    BigDecimal.valueOf(990_000 + random.nextInt(210_000), 6).doubleValue());
            assertEquals(written, Gravity.parse(written.toString()));
            Gravity computed = Gravity.ofDegrees(Seeded.between(random, -10, 200));
            assertEquals(
                    computed.excessDegrees(), Gravity.parse(computed.toString()).excessDegrees(), 0.000501);
        });
    }

    @Test
    void brewers_pounds_are_degrees_times_0_36() {
        // Cooley's Cyclopaedia of Practical Receipts, 6th ed.: 1.055 is 19.8 lb.
        assertEquals(19.8, Gravity.of(1.055).brewersPounds(), EXACT);
        // Courage brewing record, 22 September 1930: 27.34 lb is 1075.94 by the exact 1000/360 (printed with 2.77:
        // 1075.7).
        assertEquals(1.07594, Gravity.parse("27.34 lb/brl").sg(), 0.000005);
    }

    @Test
    void extract_in_a_litre_counts_the_density_of_the_wort() {
        // Above 25 °P another cubic is in use than in this table.
        for (Map<String, String> row : ReferenceTable.read("wort/litre_degrees_of_sucrose.csv")) {
            double sg = ReferenceTable.number(row, "sg");
            if (sg < 1.105) {
                double gramsPerLitre = Gravity.of(sg).extractGramsPerLitre();
                assertEquals(ReferenceTable.number(row, "kg_per_hl"), gramsPerLitre / 10, 0.0001);
                assertEquals(
                        ReferenceTable.number(row, "hwe"), Gravity.of(sg).excessDegrees() * 1000 / gramsPerLitre, 0.01);
            }
        }
    }
}
