package costrel.wort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PrimingSugarTest {
    private static final double FIVE_DIGITS = 0.00001;
    private static final double FOUR_FIGURES = 0.0005;

    private static final PrimingSugar SUCROSE = PrimingSugar.of("sucrose", 385.0);
    private static final PrimingSugar DEXTROSE = PrimingSugar.of("dextrose monohydrate", 345.0);

    /** Molar masses as the CRC Handbook, 102nd edition, prints them; two or four molecules of gas from one of sugar. */
    @Test
    void a_gram_of_sugar_gives_the_gas_of_its_molar_mass() {
        assertEquals(4 * 44.009 / 342.297, SUCROSE.mostGasGramsPerGram(), FIVE_DIGITS);
        assertEquals(4 * 44.009 / 342.297, PrimingSugar.of("maltose", 388.7).mostGasGramsPerGram(), FIVE_DIGITS);
        assertEquals(
                2 * 44.009 / 180.156,
                PrimingSugar.of("dextrose anhydrous", 379.4).mostGasGramsPerGram(),
                FIVE_DIGITS);
        assertEquals(2 * 44.009 / 180.156, PrimingSugar.of("fructose", 388.7).mostGasGramsPerGram(), FIVE_DIGITS);
        assertEquals(2 * 44.009 / 198.171, DEXTROSE.mostGasGramsPerGram(), FIVE_DIGITS);
        assertEquals(180.156 / 198.171, DEXTROSE.dryShare(), FIVE_DIGITS);
    }

    /** Stoichiometry: 1.9635 g of gas to a volume over 0.51429 g from a gram of sucrose is 3.8179 g. */
    @Test
    void a_volume_takes_so_much_sucrose() {
        assertEquals(3.8179, SUCROSE.gramsPerLitreFor(1), FOUR_FIGURES);
    }

    /** Nielsen and others, Balling's Formula (2007): 2.0665 g of extract give 0.9565 g of gas, so a volume takes 4.2421 g. */
    @Test
    void by_the_balance_of_balling_a_volume_takes_more() {
        assertEquals(1, SUCROSE.leastVolumes(4.2421), FOUR_FIGURES);
        assertEquals(1, DEXTROSE.leastVolumes(4.2421 * 198.171 / 180.156), FOUR_FIGURES);
    }

    /** The trade's 4 g of sugar to a volume (from memory) lies between the two. */
    @Test
    void the_rule_of_four_grams_lies_between_the_least_and_the_most() {
        assertTrue(SUCROSE.leastVolumes(4) < 1 && SUCROSE.mostVolumes(4) > 1);
    }

    @Test
    void milk_sugar_gives_no_gas() {
        PrimingSugar lactose = PrimingSugar.of("Lactose  Monohydrate", 373.7);
        assertFalse(lactose.ferments());
        assertEquals(0, lactose.mostVolumes(50));
        assertEquals(0, lactose.leastVolumes(50));
        Refusal.says("expected one that brewing yeast ferments", () -> lactose.gramsPerLitreFor(1));
    }

    /** Its dry part is 324/386, and none of it is taken to give less than sucrose does. */
    @Test
    void a_sugar_known_by_its_extract_alone_counts_as_sucrose() {
        PrimingSugar invert = PrimingSugar.of("brewing invert sugar", 324);
        assertEquals(324.0 / 386 * 4 * 44.009 / 342.297, invert.mostGasGramsPerGram(), FIVE_DIGITS);
    }

    @Test
    void another_article_under_the_name_of_a_sugar_goes_by_its_extract() {
        PrimingSugar syrup = PrimingSugar.of("sucrose", 250);
        assertEquals(250.0 / 386, syrup.dryShare(), FIVE_DIGITS);
        assertTrue(PrimingSugar.of("lactose", 300).ferments(), "what is no milk sugar by its extract may ferment");
    }

    /** A degree that primings bring: 1 / 0.385 g of sucrose in a litre, against the 0.50 volumes of a degree of the beer's own. */
    @Test
    void a_degree_of_primings_gives_more_than_a_degree_of_the_beer() {
        double gramsPerLitre = 1000 / 385.0;
        assertTrue(SUCROSE.leastVolumes(gramsPerLitre) > Condition.VOLUMES_PER_DEGREE);
    }

    @Test
    void the_least_is_never_over_the_most_and_doses_go_there_and_back() {
        Seeded.cases(500, random -> {
            PrimingSugar sugar = PrimingSugar.of("syrup", Seeded.between(random, 50, 400));
            double volumes = Seeded.between(random, 0, 5);
            double dose = sugar.gramsPerLitreFor(volumes);
            assertEquals(volumes, sugar.mostVolumes(dose), 1e-12);
            assertTrue(sugar.leastVolumes(dose) <= volumes);
        });
    }

    @Test
    void what_is_no_sugar_is_refused() {
        Refusal.says("extract of water: expected more than 0 L°/kg", () -> PrimingSugar.of("water", 0));
        Refusal.says("expected 0 to 400 L°/kg, found 401", () -> PrimingSugar.of("x", 401));
        Refusal.says("found NaN", () -> PrimingSugar.of("x", Double.NaN));
        Refusal.says("expected a name", () -> new PrimingSugar(" ", 1, 0.5, ""));
        Refusal.says("gas from a gram of x", () -> new PrimingSugar("x", 1, 1.1, ""));
        Refusal.says("dry part of x", () -> new PrimingSugar("x", 1.2, 0.5, ""));
        Refusal.says("primings: expected 0 g/L or more", () -> SUCROSE.mostVolumes(-1));
        Refusal.says("primings: expected 0 g/L or more", () -> SUCROSE.leastVolumes(Double.NaN));
    }
}
